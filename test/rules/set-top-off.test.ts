import assert from "node:assert/strict";
import { setText } from "./set-text.js";
import { findings, messages } from "./wall-text.js";

const CODE = "set/top-off";
const top = (height: string) => setText(`set courses 1 to 4 top ${height}`);

// Common practice: by more than the joint itself a line of courses is seen to be off.
describe("set/top-off", () => {
  it("tells a top that is a nanometre more than a joint off, and is silent at it", () => {
    assert.deepEqual(messages(top("12 1/2"), CODE), []);
    assert.deepEqual(messages(top("12 1/4"), CODE), []);
    // Three bed joints share out 1/8 in: 1/8 + 1/24 in each.
    assert.deepEqual(messages(top("12 1/2 + nm"), CODE), [
      "the top of course 4 is measured at 12 1/2+ in, 1/8+ in over where the plan has it, " +
        "at 12 3/8 in, its bed joints 5/32+ in wide; at most 1/8 in off is wanted",
    ]);
    assert.match(messages(top("12 1/4 - nm"), CODE)[0]!, /1\/8\+ in under where the plan/);
  });

  it("holds the plan's own limit", () => {
    const strict = setText("set courses 1 to 4 top 12 7/16", { plan: "rules { set 1/32 }" });
    assert.equal(messages(strict, CODE).length, 1);
    const off = setText("set courses 1 to 4 top 12 7/8", { plan: "rules { set off }" });
    assert.deepEqual(messages(off, CODE), []);
  });

  it("counts the highest of several places", () => {
    assert.deepEqual(messages(top("12 1/4 at left, 12 7/16 at right"), CODE), []);
    assert.equal(messages(top("12 1/4 at left, 12 5/8 at right"), CODE).length, 1);
  });

  it("is an error where the bed joints can't come to it: three of 1/8 in close by 3/8 in at most", () => {
    assert.deepEqual(
      findings(top("12"), CODE).map(({ severity }) => severity),
      ["warning"],
    );
    const [found] = findings(top("12 - nm"), CODE);
    assert.equal(found!.severity, "error");
    assert.match(found!.message, /the bed joints under it can't come to that, and it is left out/);
    const [course] = findings(top("15 1/2"), CODE);
    assert.equal(course!.severity, "error", "a whole course more");
  });

  it("says nothing of bed joints where one course is set", () => {
    const [message] = messages(setText("set courses 1 to 1 top 3 1/4"), CODE);
    assert.doesNotMatch(message!, /bed joints/);
  });

  it("stays what it is, although the courses are set", () => {
    const [found] = findings(top("12 3/4"), CODE);
    assert.deepEqual([found!.severity, found!.set], ["warning", undefined]);
  });
});
