import assert from "node:assert/strict";
import { laidScore } from "./laid-score.js";
import { inches, oneWall, SIXTEENTH, window } from "./model-plan.js";

const FREE = { meets: { kind: "free", trim: null } } as const;
const SIDES = { left: FREE, right: FREE, bottom: FREE, top: FREE };

describe("the score of a laid wall", () => {
  it("counts slivers, cuts under half, cut pieces and tiles, and how the ends differ", () => {
    // Across 1 + 6 + 6 + 2 1/2 in with three joints; up two whole courses of 3 in.
    const one = oneWall({
      face: [inches(6), inches(3)],
      size: [inches(15.5) + 3 * SIXTEENTH, inches(6) + SIXTEENTH],
      sides: SIDES,
    });
    assert.deepEqual(laidScore(one, SIXTEENTH, inches(-5), 0), {
      slivers: 2,
      underHalf: 2,
      imbalance: inches(1.5),
      cuts: 4,
      tiles: 8,
      jointOver: 0,
    });
  });

  it("counts a notched piece twice, and the parts of one tile as one tile", () => {
    const notched = window([0, 0], [inches(2), inches(1)], { movement: 0 });
    const split = window([inches(2), 0], [inches(2), inches(3)], { movement: 0 });
    const given = { face: [inches(6), inches(3)], size: [inches(6), inches(3)] } as const;
    const scoreWith = (openings: (typeof notched)[]) =>
      laidScore(oneWall({ ...given, sides: SIDES, openings }), SIXTEENTH, 0, 0);
    assert.deepEqual([scoreWith([notched]).cuts, scoreWith([notched]).tiles], [2, 1]);
    assert.deepEqual([scoreWith([split]).cuts, scoreWith([split]).tiles], [2, 1]);
  });

  it("tells how far the joint is over the least", () => {
    const one = oneWall({
      face: [inches(6), inches(3)],
      size: [inches(30), inches(30)],
      joint: [SIXTEENTH, 2 * SIXTEENTH],
    });
    assert.equal(laidScore(one, 2 * SIXTEENTH, 0, 0).jointOver, SIXTEENTH);
  });
});
