import assert from "node:assert/strict";
import { cutsInto, sideInside } from "../../src/rules/side-line.js";

const box = { left: 0, bottom: 0, right: 60, top: 30 };
const slope = (value: number[]) => ({ at: [0, 60], value });

describe("a side along a box", () => {
  it("lies as deep inside as it cuts, at its deepest and shallowest", () => {
    assert.deepEqual(sideInside(slope([2, 8]), box, "bottom", box), { deepest: 8, shallowest: 2 });
    assert.deepEqual(sideInside(slope([29, 25]), box, "top", box), { deepest: 5, shallowest: 1 });
    assert.deepEqual(sideInside(slope([4, 4]), box, "left", box), { deepest: 4, shallowest: 4 });
    assert.deepEqual(sideInside(slope([70, 50]), box, "right", box), {
      deepest: 0,
      shallowest: -10,
    });
  });

  it("cuts into it where it is deeper than the box's own side anywhere along it", () => {
    assert.ok(cutsInto(slope([-4, 1]), box, "bottom"));
    assert.ok(!cutsInto(slope([-4, 0]), box, "bottom"));
    assert.ok(cutsInto(slope([31, 29]), box, "top"));
    assert.ok(!cutsInto(slope([31, 30]), box, "top"));
    // Lower down than the box begins, or higher up than it ends, it may lie as it will.
    assert.ok(!cutsInto({ at: [-60, 0], value: [9, 0] }, box, "left"));
    assert.ok(!cutsInto({ at: [30, 60], value: [60, 9] }, box, "right"));
  });

  it("is looked at along the stretch asked for only", () => {
    const half = { ...box, right: 30 };
    assert.deepEqual(sideInside(slope([0, 8]), box, "bottom", half), { deepest: 4, shallowest: 0 });
  });
});
