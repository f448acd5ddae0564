import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { choose, compareScores } from "../../../src/solver/choose/index.js";
import { latticeOf, moduleAcross, moduleUp } from "../../../src/solver/lattice.js";
import { regionOf } from "../../../src/solver/region.js";
import type { Score } from "../../../src/solver/index.js";
import { randomFrom, type Random } from "../../support/random.js";
import { laidScore } from "./laid-score.js";
import { inches, type OneWall, oneWall, STEP, window } from "./model-plan.js";

/** What a random small wall has, besides its tiles: modules of about an inch, so that all starts can be tried. */
interface Kind {
  readonly opening?: boolean;
  readonly hole?: boolean;
  /** The sides that are measured, each with two or three readings. */
  readonly measured?: readonly ("left" | "right" | "bottom" | "top")[];
  /** How many steps of 1/64 in the joint may be wider. */
  readonly range?: number;
}

function smallWall(random: Random, kind: Kind): OneWall {
  const face = [STEP * random.integer(50, 76), STEP * random.integer(40, 56)] as const;
  const size = [STEP * random.integer(180, 300), STEP * random.integer(150, 230)] as const;
  const readings = (length: number) =>
    [0, random.integer(20, 44) / 64, 1].slice(0, random.integer(2, 3)).map((part) => ({
      at: Math.round(part * length),
      off: STEP * random.integer(-8, 8),
    }));
  const sides = Object.fromEntries(
    (kind.measured ?? []).map((side) => {
      const length = side === "left" || side === "right" ? size[1] : size[0];
      return [side, { measured: readings(length) }];
    }),
  );
  const place = (length: number, part: number) =>
    STEP * random.integer(20, Math.floor((length / STEP) * part));
  return oneWall({
    face,
    size,
    sides,
    bond: random.chance(0.5) ? { kind: "stack" } : { kind: "running", p: 1, q: 2 },
    joint: [4 * STEP, (4 + (kind.range ?? 0)) * STEP],
    openings: kind.opening
      ? [window([place(size[0], 0.4), place(size[1], 0.4)], [inches(1.25), inches(0.9)])]
      : [],
    holes: kind.hole
      ? [[place(size[0], 0.8), place(size[1], 0.8), 2 * STEP * random.integer(10, 40)]]
      : [],
  });
}

/** The best score of every start in steps of 1/64 in, counted over the laid pieces. */
function bestOfAll(one: OneWall, step = STEP): Score {
  let best: Score | null = null;
  for (let joint = one.lay.joint.min; joint <= one.lay.joint.max; joint += STEP) {
    const lattice = latticeOf(one.lay, joint, 0, 0);
    const { left, bottom } = regionOf(one.plan, one.wall, joint).bounds;
    for (let x = left; x < left + moduleAcross(lattice); x += step) {
      for (let y = bottom; y < bottom + moduleUp(lattice); y += step) {
        const score = laidScore(one, joint, x, y);
        if (!best || compareScores(score, best) < 0) best = score;
      }
    }
  }
  return best!;
}

function isNeverWorse(kind: Kind, seeds: readonly number[], step = STEP): void {
  for (const seed of seeds) {
    const { capped, text } = compared(kind, seed, step);
    assert.equal(capped, false, text);
  }
}

/** Compares the choice with all starts; a worse one must say that it was stopped. */
function compared(kind: Kind, seed: number, step: number) {
  const one = smallWall(randomFrom(seed), kind);
  const { choice } = choose(one.plan, one.wall, one.lay);
  const { score } = choice!.chosen;
  const best = bestOfAll(one, step);
  const text = JSON.stringify({ seed, kind, score, best });
  assert.ok(choice!.capped || compareScores(score, best) <= 0, text);
  return { capped: choice!.capped, score, best, text };
}

describe("the chosen start against every start in steps of 1/64 in", () => {
  it("is never worse round an opening", () => isNeverWorse({ opening: true }, [1, 2]));

  it("is never worse round a hole", () => isNeverWorse({ hole: true }, [1, 2]));

  it("is never worse round an opening and a hole", () => {
    isNeverWorse({ opening: true, hole: true }, [1]);
  });

  for (const side of ["left", "right", "bottom", "top"] as const) {
    it(`is never worse along a measured ${side}`, () => isNeverWorse({ measured: [side] }, [1]));
  }

  it("is never worse along a measured bottom and left", () => {
    isNeverWorse({ measured: ["bottom", "left"] }, [1]);
  });

  for (const measured of [
    ["left", "right"],
    ["bottom", "top"],
    ["right", "top"],
  ] as const) {
    it(`is never worse along a measured ${measured.join(" and ")}`, () => {
      isNeverWorse({ measured }, [1]);
    });
  }

  it("is never worse along all four sides, and stops before that on one wall in two at most", () => {
    const seeds = [1, 2, 4, 5];
    const measured = ["left", "right", "bottom", "top"] as const;
    const stopped = seeds.filter((seed) => compared({ measured }, seed, STEP).capped);
    console.log(`      stopped: ${stopped.length} of ${seeds.length}`);
    assert.ok(stopped.length <= seeds.length / 2);
  });

  it("is never worse along a measured bottom with a range for the joint", () => {
    // Not every joint of the range is looked through, and the choice says so.
    for (const seed of [1, 2]) {
      const { capped, score, best, text } = compared(
        { measured: ["bottom"], range: 2 },
        seed,
        STEP,
      );
      assert.ok(compareScores(score, best) <= 0, text);
      assert.ok(capped);
    }
  });

  it("is never worse with a range for the joint", () => {
    isNeverWorse({ opening: true, range: 2 }, [1]);
  });

  it("is never worse in whole sixty-fourths of a wall of real size", () => {
    const one = oneWall({
      face: [inches(5.875), inches(2.875)],
      size: [inches(59.5), inches(91.25)],
      bond: { kind: "running", p: 1, q: 2 },
      openings: [window([inches(18), inches(46.25)], [inches(24), inches(30)])],
      holes: [[inches(46), inches(30.5), inches(4.5)]],
      up: { kind: "full-course", from: "bottom" },
    });
    const { choice } = choose(one.plan, one.wall, one.lay);
    assert.equal(choice!.capped, false);
    const { left, bottom } = regionOf(one.plan, one.wall, one.lay.joint.min).bounds;
    for (let x = left; x < left + inches(5.9375); x += NM_PER.inch / 64) {
      const score = laidScore(one, one.lay.joint.min, x, bottom);
      assert.ok(compareScores(choice!.chosen.score, score) <= 0, `x ${x}`);
    }
  });
});
