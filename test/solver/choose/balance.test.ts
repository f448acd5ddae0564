import assert from "node:assert/strict";
import {
  type Balance,
  endsOf,
  imbalanceAcross,
  tilesWithin,
} from "../../../src/solver/choose/balance.js";

const row = { face: 60, module: 64, clearLow: 0, clearHigh: 200 };

describe("the balance of a row's ends", () => {
  it("is told by what is seen of its first and last tile", () => {
    assert.deepEqual(endsOf(row, 10), { low: 6, high: 60 });
    assert.deepEqual(endsOf(row, 6), { low: 2, high: 2 });
    assert.deepEqual(endsOf(row, 30), { low: 26, high: 42 });
  });

  it("takes a tile that begins at the joint's far side for whole", () => {
    assert.deepEqual(endsOf(row, 2), { low: 60, high: 6 });
    assert.deepEqual(endsOf(row, 4), { low: 60, high: 4 });
  });

  it("gives one tile across the whole row two equal ends", () => {
    assert.deepEqual(endsOf({ ...row, clearHigh: 50 }, -5), { low: 50, high: 50 });
  });

  it("holds nothing against a bond that only swaps its ends", () => {
    const across = { face: 60, module: 64, clearLow: 0, clearHigh: 64 * 3 + 28 };
    const balance: Balance = { across, up: row, shifts: [0, 32] };
    const [a, b] = [endsOf(across, -32), endsOf(across, 0)];
    assert.deepEqual([a.low, a.high, b.low, b.high], [28, 60, 60, 28]);
    assert.equal(imbalanceAcross(balance, -32), 0);
  });

  it("forgives an odd nanometre", () => {
    const balance: Balance = { across: { ...row, clearHigh: 201 }, up: row, shifts: [0] };
    const { low, high } = endsOf(balance.across, 36);
    assert.equal(Math.abs(low - high) % 2, 1);
    assert.equal(imbalanceAcross(balance, 36), Math.abs(low - high) - 1);
  });

  it("knows how many tiles are seen however the row starts", () => {
    for (const clearHigh of [3, 4, 5, 64, 67, 68, 69, 128, 200]) {
      let least = Infinity;
      for (let origin = 0; origin < 64; origin++) {
        let seen = 0;
        for (let left = origin - 64; left < clearHigh; left += 64) if (left + 60 > 0) seen++;
        least = Math.min(least, seen);
      }
      assert.equal(tilesWithin({ ...row, clearHigh }), least, `${clearHigh}`);
    }
  });
});
