import assert from "node:assert/strict";
import { measuresOf } from "../../../src/sheets/setting-out/measures.js";
import { inches, laid, wallText } from "./plans.js";

describe("measuresOf", () => {
  it("has the limits that the rules judge by: half, and a third or 1 in for slivers", () => {
    const { plan, lay } = laid(wallText());
    const across = measuresOf(lay, plan.plan.limits, "across", 7);
    assert.deepEqual(across, {
      face: inches(4),
      half: inches(2),
      sliver: Math.ceil(inches(4) / 3),
      joint: 7,
    });
    assert.deepEqual(measuresOf(lay, plan.plan.limits, "up", null).joint, null);
  });

  it("holds the ends of a running bond to the sliver alone", () => {
    const { plan, lay } = laid(wallText({ bond: "running 1/2" }));
    assert.equal(measuresOf(lay, plan.plan.limits, "across", 0).half, 0);
    assert.equal(measuresOf(lay, plan.plan.limits, "up", 0).half, inches(2));
  });
});
