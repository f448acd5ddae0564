import assert from "node:assert/strict";
import { fieldOf } from "../../../src/solver/choose/field.js";
import { runsOf } from "../../../src/solver/choose/runs.js";
import { columnsOf, lowestCourse, weigh } from "../../../src/solver/choose/weigh.js";
import type { Nm } from "../../../src/measure/index.js";
import { regionOf } from "../../../src/solver/region.js";
import type { Score } from "../../../src/solver/index.js";
import { randomFrom } from "../../support/random.js";
import { laidScore } from "./laid-score.js";
import { type OneWall, oneWall, randomGiven, type Variety } from "./model-plan.js";

/** The score of the same start, weighed without laying a piece. */
function weighedScore({ plan, wall, lay }: OneWall, joint: Nm, x: Nm, y: Nm): Score {
  const field = fieldOf(plan, wall, lay, joint);
  const bottom = lowestCourse(field, y);
  const start = { x, columns: columnsOf(field, x), y: bottom, courses: runsOf(field.up, bottom) };
  return weigh(field, start, { cells: 0 }, null)!;
}

function compare(seeds: number, variety: Variety): void {
  for (let seed = 1; seed <= seeds; seed++) {
    const random = randomFrom(seed);
    const one = oneWall(randomGiven(random, variety));
    const { face, joint } = { face: one.lay.tile.face, joint: one.lay.joint.min };
    const { bounds } = regionOf(one.plan, one.wall, joint);
    const nearX = [
      bounds.left,
      bounds.right,
      bounds.right - face.across,
      random.integer(0, face.across),
    ];
    const nearY = [bounds.bottom, bounds.top, bounds.top - face.up, random.integer(0, face.up)];
    for (let n = 0; n < 6; n++) {
      const x = random.pick(nearX) + random.integer(-1, 1);
      const y = random.pick(nearY) + random.integer(-1, 1);
      assert.deepEqual(
        weighedScore(one, joint, x, y),
        laidScore(one, joint, x, y),
        `seed ${seed}, x ${x}, y ${y}`,
      );
    }
  }
}

describe("weighing a start without laying its pieces", () => {
  const plain = { measured: false, openings: 0, holes: false, corners: true, most: 6 };

  it("comes to what the laid pieces count on walls without openings", () => {
    compare(300, plain);
  });

  it("comes to what the laid pieces count round openings", () => {
    compare(400, { ...plain, openings: 3 });
  });

  it("comes to what the laid pieces count round holes", () => {
    compare(150, { ...plain, openings: 1, holes: true });
  });

  it("comes to what the laid pieces count along measured sides", () => {
    compare(200, { ...plain, openings: 2, holes: true, measured: true });
  });

  it("comes to what the laid pieces count along the slopes of an outline", () => {
    compare(200, { ...plain, openings: 2, holes: true, measured: true, outlined: true });
  });
});
