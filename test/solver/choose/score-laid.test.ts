import assert from "node:assert/strict";
import { check } from "../../../src/rules/index.js";
import { scoreOf } from "../../../src/solver/choose/index.js";
import { firstWall, solveClean } from "../../support/solve-text.js";
import { laidScore } from "./laid-score.js";
import { inches, oneWall, SIXTEENTH, window } from "./model-plan.js";

const FREE = { meets: { kind: "free", trim: null } } as const;
const SIDES = { left: FREE, right: FREE, bottom: FREE, top: FREE };

const GABLE = `units inch
tile field {
  face 7 7/8 x 3 7/8
  thickness 5/16
}
wall back {
  outline 0, 0 to 60, 0 to 60, 70 to 40, 96 to 20, 90 to 0, 80
  bottom floor movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  lay field {
    bond running 1/2
    joint 1/8
    across START
    up full course from bottom
  }
}
`;

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

  it("counts slivers along an outline's slope by their bounds, along a measured side at the narrow end", () => {
    // One tile of 6 x 3 in under a top that falls from 3 in to 1/2 in over it.
    const measured = [
      { at: 0, off: 0 },
      { at: inches(6), off: inches(-2.5) },
    ];
    const sliversUnder = (outlined: boolean) => {
      const top = { ...FREE, measured, outlined };
      const size = [inches(6), inches(3)] as const;
      const one = oneWall({ face: size, size, sides: { ...SIDES, top } });
      return laidScore(one, SIXTEENTH, 0, 0).slivers;
    };
    assert.deepEqual([sliversUnder(true), sliversUnder(false)], [0, 1]);
  });

  it("counts the slivers and the pieces under half that the rules tell of, under a gable too", () => {
    for (const start of ["tile centred on wall", "joint centred on wall", "full tile from left"]) {
      const answer = solveClean(GABLE.replace("START", start));
      const { wall, laid } = firstWall(answer);
      const told = (rule: string) =>
        new Set(
          check(answer.solved).flatMap(({ code, pieces }) => (code === rule ? (pieces ?? []) : [])),
        ).size;
      const { slivers, underHalf } = scoreOf(wall.wall, laid, answer.plan.limits);
      assert.deepEqual([slivers, underHalf], [told("cut/sliver"), told("cut/under-half")], start);
      assert.ok(slivers > 0);
    }
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
