import assert from "node:assert/strict";
import { imbalanceAcross, imbalanceUp } from "../../../src/solver/choose/balance.js";
import { fieldOf } from "../../../src/solver/choose/field.js";
import {
  leastImbalanceAcross,
  leastImbalanceUp,
} from "../../../src/solver/choose/imbalance-least.js";
import { randomFrom } from "../../support/random.js";
import { oneWall, randomGiven } from "./model-plan.js";

describe("the least that the ends differ over a box of starts", () => {
  it("is never more than they do at any of them, and the same at a single one", () => {
    const variety = { measured: true, openings: 0, holes: false, corners: true, most: 9 };
    for (let seed = 1; seed <= 200; seed++) {
      const random = randomFrom(seed);
      const { plan, wall, lay } = oneWall(randomGiven(random, variety));
      const field = fieldOf(plan, wall, lay, lay.joint.min);
      const { balance } = field;
      const x0 = random.integer(0, field.across.module);
      const y0 = random.integer(0, field.up.module);
      const size = random.pick([0, 2, 5, 1_000, 10_000_000]);
      const box = { field, x0, x1: x0 + size, y0, y1: y0 + size };
      for (let n = 0; n < 20; n++) {
        const by = random.integer(0, size);
        const text = `seed ${seed}, by ${by} of ${size}`;
        const across = imbalanceAcross(balance, x0 + by);
        const up = imbalanceUp(balance, y0 + by);
        assert.ok(leastImbalanceAcross(box) <= across, text);
        assert.ok(leastImbalanceUp(box) <= up, text);
        if (size > 0 || field.up.clearLow >= field.up.clearHigh) continue;
        assert.equal(leastImbalanceUp(box), up, text);
      }
    }
  });
});
