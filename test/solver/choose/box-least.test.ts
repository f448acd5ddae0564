import assert from "node:assert/strict";
import { edgesOf, type Known, leastOf } from "../../../src/solver/choose/box-least.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import {
  leastImbalanceAcross,
  leastImbalanceUp,
} from "../../../src/solver/choose/imbalance-least.js";
import { compareScores } from "../../../src/solver/choose/index.js";
import type { StartBox } from "../../../src/solver/choose/start-box.js";
import { randomFrom } from "../../support/random.js";
import { laidScore } from "./laid-score.js";
import { oneWall, randomGiven, type Variety } from "./model-plan.js";

/** No start of a box costs less than is told of the box; how many slivers are told of all boxes. */
function neverTooHigh(seeds: number, variety: Variety): number {
  let told = 0;
  for (let seed = 1; seed <= seeds; seed++) {
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
  return told;
}

describe("what every start of a box costs at least", () => {
  const variety = { measured: true, openings: 2, holes: true, corners: true, most: 5 };

  it("is never more than any of them does cost", () => {
    assert.ok(neverTooHigh(100, variety) > 0);
  });

  it("is never more along the slopes of an outline, where pieces are judged by their bounds", () => {
    assert.ok(neverTooHigh(150, { ...variety, outlined: true }) > 0);
  });

  it("is never more in a part of a box, with what the box settled taken over", () => {
    const variety = { measured: true, openings: 1, holes: true, corners: true, most: 5 };
    let taken = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const random = randomFrom(seed);
      const one = oneWall(randomGiven(random, variety));
      const field = fieldOf(one.plan, one.wall, one.lay, one.lay.joint.min);
      const given = { edges: edgesOf(field), best: null, effort: { cells: 0 } };
      const leastIn = (box: StartBox, known: Known | null) => {
        const imbalance = leastImbalanceAcross(box) + leastImbalanceUp(box);
        return leastOf(box, { ...given, imbalance, known });
      };
      for (let n = 0; n < 4; n++) {
        const size = random.pick([1_000, 100_000, 4_000_000]);
        const [x, y] = [random.integer(0, 9_000_000), random.integer(0, 9_000_000)];
        let known: Known | null = null;
        for (let half = size; half > 10; half = Math.floor(half / 2)) {
          const box = { field, x0: x, x1: x + half, y0: y, y1: y + half };
          const least = leastIn(box, known);
          if (!least) break;
          if (known) taken++;
          const at = { x: random.integer(x, x + half), y: random.integer(y, y + half) };
          const score = laidScore(one, one.lay.joint.min, at.x, at.y);
          const text = JSON.stringify({ seed, half, least, score });
          assert.ok(compareScores(least.score, score) <= 0, text);
          known = least.known;
        }
      }
    }
    assert.ok(taken > 300, `${taken} parts`);
  });
});
