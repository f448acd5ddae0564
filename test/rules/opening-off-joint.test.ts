import assert from "node:assert/strict";
import { findings, messages } from "./wall-text.js";

const CODE = "opening/off-joint";
/** A niche whose takeaway runs from 6 to 18 3/8 in across and from 3 to 12 1/2 in up: joint to joint. */
const niche = (
  over: { x?: string; y?: string; across?: string; up?: string; kind?: string } = {},
) => ({
  size: "42 3/4 x 24 7/8",
  wall: `${over.kind ?? "niche"} shelf {
 at ${over.x ?? "6 1/8"}, ${over.y ?? "3 1/8"}
 size ${over.across ?? "12 1/8"} x ${over.up ?? "9 1/4"}
 movement 1/8
}`,
});

describe("opening/off-joint", () => {
  it("is silent about a niche from joint to joint", () => {
    assert.deepEqual(messages(niche(), CODE), []);
  });

  it("tells a side that cuts tile by one nanometre", () => {
    assert.deepEqual(messages(niche({ across: "12 1/8 + nm" }), CODE), [
      "niche shelf is off the joints: its right by 0+ in; each side on a joint is wanted",
    ]);
    assert.match(messages(niche({ x: "6 1/8 - nm" }), CODE)[0]!, /its left by 0\+ in; each/);
    assert.match(messages(niche({ up: "9 1/4 + nm" }), CODE)[0]!, /its top by/);
    assert.match(messages(niche({ y: "3 1/8 - nm" }), CODE)[0]!, /its bottom by/);
  });

  it("is silent where a side falls anywhere within a joint", () => {
    assert.deepEqual(messages(niche({ x: "6 3/16", across: "12" }), CODE), []);
  });

  it("tells every side that is off, and how far the nearest joint is", () => {
    const [found] = findings(niche({ x: "7", y: "4 1/8", across: "12 1/8", up: "9 1/4" }), CODE);
    assert.equal(
      found!.message,
      "niche shelf is off the joints: its left by 7/8 in, its right by 7/8 in, its bottom by 1 in, " +
        "its top by 1 in; each side on a joint is wanted",
    );
    assert.equal(found!.severity, "warning");
    assert.ok(found!.pieces!.length > 0);
  });

  it("takes an upright side in a running bond as on a joint when some course has one there", () => {
    assert.deepEqual(messages({ ...niche(), bond: "running 1/2" }, CODE), []);
    assert.match(
      messages({ ...niche({ x: "6" }), bond: "running 1/2" }, CODE)[0]!,
      /its left by 1\/8 in/,
    );
  });

  it("leaves windows, which cannot move, alone", () => {
    assert.deepEqual(messages(niche({ kind: "window", x: "7" }), CODE), []);
  });

  it("is silent when the plan turns it off, and silenced by an allow in the niche", () => {
    const off = niche({ x: "7" });
    assert.deepEqual(messages({ ...off, plan: "rules {\n niche off\n}" }, CODE), []);
    const wall = off.wall.replace("\n}", '\nallow opening/off-joint "between studs"\n}');
    assert.equal(findings({ ...off, wall }, CODE)[0]!.allowed, "between studs");
  });
});
