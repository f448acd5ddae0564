import assert from "node:assert/strict";
import { setText } from "./set-text.js";
import { messages } from "./wall-text.js";

const CODE = "set/out-of-level";
const tops = (told: string, plan = "") => setText(`set courses 1 to 4 top ${told}`, { plan });

// A tub or a pan is to be level within 1/8 in: doityourself.com/stry/tileceramiclayout; of a course: common practice.
describe("set/out-of-level", () => {
  it("tells a top a nanometre more than 1/8 in out of level, and is silent at it", () => {
    assert.deepEqual(messages(tops("12 3/8 at left, 12 1/4 at right"), CODE), []);
    assert.deepEqual(messages(tops("12 3/8 at left, 12 3/8 at 6, 12 1/4 - nm at right"), CODE), [
      "the top of course 4 is 1/8+ in out of level: 12 1/4- in at 24 3/8 in from the left, " +
        "12 3/8 in at 0 in from the left; at most 1/8 in is wanted, which the bed joint over it takes up",
    ]);
  });

  it("holds the plan's own limit", () => {
    assert.equal(
      messages(tops("12 3/8 at left, 12 5/16 at right", "rules { level 1/32 }"), CODE).length,
      1,
    );
    assert.equal(
      messages(tops("12 3/8 at left, 12 at right", "rules { level off }"), CODE).length,
      0,
    );
  });

  it("is silent about a top that was measured once, or not at all", () => {
    assert.deepEqual(messages(tops("12 1/2"), CODE), []);
    assert.deepEqual(messages(setText("set courses 1 to 4"), CODE), []);
  });
});
