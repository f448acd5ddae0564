import assert from "node:assert/strict";
import { fieldOf, isFlat } from "../../../src/solver/choose/field.js";
import { FRAME, inches, oneWall, TRIM, window } from "./model-plan.js";

describe("the field of a wall", () => {
  it("has the edges that stay straight, and the slopes apart", () => {
    const { plan, wall, lay } = oneWall({
      face: [inches(6), inches(3)],
      size: [inches(60), inches(40)],
      sides: {
        left: {
          measured: [
            { at: 0, off: 0 },
            { at: inches(40), off: inches(0.25) },
          ],
        },
      },
    });
    const { across, up, sides } = fieldOf(plan, wall, lay, lay.joint.min);
    assert.deepEqual(across.edges, [inches(59.875)]);
    assert.deepEqual(up.edges, [inches(0.125), inches(39.875)]);
    assert.equal(across.slopes.length, 1);
    assert.equal(isFlat(sides.left), false);
    // The joint of 1/8 in, and the lean as far up as the region reaches.
    const lean = inches((0.25 * 39.875) / 40);
    assert.deepEqual([across.clearLow, across.clearHigh], [inches(0.125) + lean, inches(59.875)]);
  });

  it("moves a framed opening's edges with the joint", () => {
    const sash = window([inches(18), inches(10)], [inches(24), inches(20)], { frame: FRAME });
    const { plan, wall, lay } = oneWall({
      face: [inches(6), inches(3)],
      size: [inches(60), inches(40)],
      openings: [sash],
    });
    const left = inches(18) - TRIM.face.across;
    for (const joint of [inches(1 / 16), inches(1 / 8)]) {
      assert.ok(fieldOf(plan, wall, lay, joint).across.edges.includes(left - joint));
    }
  });
});
