import assert from "node:assert/strict";
import { edgesOf, leastOf } from "../../../src/solver/choose/box-least.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import {
  leastImbalanceAcross,
  leastImbalanceUp,
} from "../../../src/solver/choose/imbalance-least.js";
import { compareScores } from "../../../src/solver/choose/index.js";
import { randomFrom } from "../../support/random.js";
import { laidScore } from "./laid-score.js";
import { oneWall, randomGiven } from "./model-plan.js";

describe("what every start of a box costs at least", () => {
  it("is never more than any of them does cost", () => {
    const variety = { measured: true, openings: 2, holes: true, corners: true, most: 5 };
    let told = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const random = randomFrom(seed);
      const one = oneWall(randomGiven(random, variety));
      const field = fieldOf(one.plan, one.wall, one.lay, one.lay.joint.min);
      for (let n = 0; n < 5; n++) {
        const size = random.pick([0, 3, 1_000, 100_000, 1_000_000]);
        const x0 = random.integer(0, field.across.module);
        const y0 = random.integer(0, field.up.module);
        const box = { field, x0, x1: x0 + size, y0, y1: y0 + random.integer(0, size) };
        const least = leastOf(box, {
          edges: edgesOf(field),
          imbalance: leastImbalanceAcross(box) + leastImbalanceUp(box),
          best: null,
          effort: { cells: 0 },
          known: null,
        });
        for (let i = 0; i < 5; i++) {
          const x = random.integer(box.x0, box.x1);
          const y = random.integer(box.y0, box.y1);
          const score = laidScore(one, one.lay.joint.min, x, y);
          const text = JSON.stringify({ seed, size, least, score });
          if (!least) assert.equal(score.tiles, 0, text);
          else assert.ok(compareScores(least.score, score) <= 0, text);
        }
        told += least?.score.slivers ?? 0;
      }
    }
    assert.ok(told > 0);
  });
});
