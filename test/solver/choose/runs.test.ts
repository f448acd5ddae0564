import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { runsOf } from "../../../src/solver/choose/runs.js";
import { inches, oneWall, window } from "./model-plan.js";

describe("runs of like tiles", () => {
  const { plan, wall, lay } = oneWall({
    face: [inches(5.9375), inches(3)],
    size: [inches(60), inches(40)],
    openings: [window([inches(20), inches(10)], [inches(20), inches(10)])],
  });
  const field = fieldOf(plan, wall, lay, lay.joint.min);

  it("part at every edge, and are one tile where an edge runs through it", () => {
    // Modules of 6 in from 0: the sides cut tiles 0 and 9, the opening's jambs 3 and 6.
    assert.deepEqual(
      runsOf(field.across, 0).map(({ from, to }) => [from, to]),
      [
        [0, 1],
        [1, 3],
        [3, 4],
        [4, 6],
        [6, 7],
        [7, 9],
        [9, 10],
      ],
    );
  });

  it("are as many on a wall of any size", () => {
    const far = { ...field.across, high: 1e6 * field.across.module };
    assert.equal(runsOf(far, 0).length, runsOf(field.across, 0).length + 1);
  });
});
