import assert from "node:assert/strict";
import { choose, compareScores } from "../../../src/solver/choose/index.js";
import { latticeOf, moduleAcross, moduleUp } from "../../../src/solver/lattice.js";
import { regionOf } from "../../../src/solver/region.js";
import type { Score } from "../../../src/solver/index.js";
import { planOf } from "../../language/telling.js";
import { randomFrom, type Random } from "../../support/random.js";
import { laidScore } from "./laid-score.js";
import { type OneWall, STEP } from "./model-plan.js";

const at = (steps: number): string => `${steps}/64`;

/** A small wall with such an outline: modules of about an inch, so that all starts can be tried. */
function outlined(random: Random, outlineOf: (random: Random) => string): OneWall {
  const face = `${at(random.integer(50, 76))} x ${at(random.integer(40, 56))}`;
  const bond = random.chance(0.5) ? "stack" : "running 1/2";
  const plan = planOf(`units inch
tile field {
  face ${face}
  thickness 5/16
}
wall back {
  outline ${outlineOf(random)}
  bottom floor movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  lay field {
    bond ${bond}
    joint 1/16
  }
}
`);
  const [wall] = plan.walls;
  assert.ok(wall?.outline && wall.lays[0]);
  return { plan, wall, lay: wall.lays[0] };
}

/** The best score of every start in steps of 1/64 in, counted over the laid pieces. */
function bestOfAll(one: OneWall): Score {
  const joint = one.lay.joint.min;
  const lattice = latticeOf(one.lay, joint, 0, 0);
  const { left, bottom } = regionOf(one.plan, one.wall, joint).bounds;
  let best: Score | null = null;
  for (let x = left; x < left + moduleAcross(lattice); x += STEP) {
    for (let y = bottom; y < bottom + moduleUp(lattice); y += STEP) {
      const score = laidScore(one, joint, x, y);
      if (!best || compareScores(score, best) < 0) best = score;
    }
  }
  return best!;
}

/** The choice is no worse than any start, and no more of these than so many were stopped before all was looked at. */
function isNeverWorse(
  outlineOf: (random: Random) => string,
  seeds: readonly number[],
  mayStop = 0,
): void {
  let stopped = 0;
  for (const seed of seeds) {
    const one = outlined(randomFrom(seed), outlineOf);
    const { choice } = choose(one.plan, one.wall, one.lay);
    const { score } = choice!.chosen;
    const best = bestOfAll(one);
    const told = JSON.stringify({ seed, score, best, capped: choice!.capped });
    assert.ok(compareScores(score, best) <= 0, told);
    if (choice!.capped) stopped++;
  }
  assert.ok(stopped <= mayStop, `${stopped} of ${seeds.length} were stopped`);
}

function corners(...points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y]) => `${at(x)}, ${at(y)}`).join(" to ");
}

const GABLES = [21, 22, 23];

/** A gable with this rise over run, one side of it steeper. */
function gable(random: Random, rise: number): string {
  const wide = random.integer(180, 240);
  const peak = Math.round(wide * (0.3 + (0.4 * random.integer(0, 8)) / 8));
  const eaves = random.integer(90, 120);
  const up = eaves + Math.min(140, Math.round(peak * rise));
  const right = Math.max(20, up - Math.min(150, Math.round((wide - peak) * rise * 1.3)));
  return corners([0, 0], [wide, 0], [wide, right], [peak, up], [0, eaves]);
}

describe("the start chosen on an outlined wall against every start in steps of 1/64 in", () => {
  it("is never worse with a step in its top: a half wall beside a whole one", () => {
    isNeverWorse(
      (random) => {
        const [wide, up] = [random.integer(200, 280), random.integer(150, 220)];
        const [x, y] = [random.integer(60, 140), random.integer(70, 130)];
        return corners([0, 0], [wide, 0], [wide, y], [x, y], [x, up], [0, up]);
      },
      [1, 2, 3],
    );
  });

  it("is never worse with a step in its bottom", () => {
    isNeverWorse(
      (random) => {
        const [wide, up] = [random.integer(200, 280), random.integer(150, 220)];
        const [x, y] = [random.integer(60, 140), random.integer(20, 70)];
        return corners([0, y], [x, y], [x, 0], [wide, 0], [wide, up], [0, up]);
      },
      [4, 5],
    );
  });

  it("is never worse under a sloped ceiling", () => {
    isNeverWorse(
      (random) => {
        const [wide, up] = [random.integer(200, 260), random.integer(150, 200)];
        return corners([0, 0], [wide, 0], [wide, random.integer(80, 120)], [0, up]);
      },
      [6, 7],
    );
  });

  it("is never worse under a ceiling that slopes down to a step up", () => {
    isNeverWorse(
      (random) => {
        const [wide, up] = [random.integer(200, 260), random.integer(150, 200)];
        const [x, y] = [random.integer(90, 130), random.integer(80, 120)];
        return corners([0, 0], [wide, 0], [wide, up], [x, up], [x, y], [0, y + 40]);
      },
      [10, 11],
    );
  });

  it("is never worse over a bottom that slopes up to a step down", () => {
    isNeverWorse(
      (random) => {
        const [wide, up] = [random.integer(200, 260), random.integer(150, 200)];
        const [x, y] = [random.integer(90, 130), random.integer(30, 60)];
        return corners([0, 0], [x, y], [x, 0], [wide, 0], [wide, up], [0, up]);
      },
      [12, 13],
    );
  });

  it("is never worse under a ceiling that is level first and slopes then", () => {
    isNeverWorse(
      (random) => {
        const [wide, up] = [random.integer(200, 260), random.integer(150, 200)];
        const [x, y] = [random.integer(70, 130), random.integer(80, 120)];
        return corners([0, 0], [wide, 0], [wide, y], [x, up], [0, up]);
      },
      [8, 9],
    );
  });

  for (const [name, rise, mayStop] of [
    ["gently", 0.15, 0],
    ["at four in twelve", 1 / 3, 0],
    ["at twelve in twelve", 1, 0],
    ["steeply", 2.5, 1],
  ] as const) {
    it(`is never worse under a gable that slopes ${name}`, () => {
      isNeverWorse((random) => gable(random, rise), GABLES, mayStop);
    });
  }

  it("is never worse beside a side that leans far", () => {
    isNeverWorse(
      (random) => {
        const [wide, up] = [random.integer(200, 260), random.integer(150, 200)];
        return corners([0, 0], [wide - random.integer(10, 60), 0], [wide, up], [0, up]);
      },
      [31, 32, 33],
    );
  });
});
