import assert from "node:assert/strict";
import {
  highestOver,
  isStraight,
  lowestUnder,
  rangeBetween,
  valueAt,
} from "../../src/solver/index.js";
import { atLeast, atMost, betweenRisers, moved, valueAfter } from "../../src/solver/chain.js";

const pan = { at: [0, 30, 60], value: [0, -3, 2] };

describe("a measured side", () => {
  it("is straight between readings and flat beyond its ends", () => {
    assert.equal(valueAt(pan, 20), -2);
    assert.equal(valueAt(pan, 30), -3);
    assert.equal(valueAt(pan, -5), 0);
    assert.equal(valueAt(pan, 99), 2);
  });

  it("rounds once to the nearest nanometre", () => {
    assert.equal(valueAt(pan, 14), -1); // -1.4
    assert.equal(valueAt(pan, 36), -2); // exact
    assert.equal(valueAt(pan, 37), -2); // -1.8333
  });

  it("is exact where the product of rise and run passes 2 to the 53rd", () => {
    const long = { at: [0, 9_000_000_000_001], value: [0, 3_000_000_000_001] };
    assert.equal(valueAt(long, 6_000_000_000_001), 2_000_000_000_001);
  });

  it("has its range from its ends and the readings between", () => {
    assert.deepEqual(rangeBetween(pan, 10, 50), { low: -3, high: 0 });
    assert.deepEqual(rangeBetween(pan, 0, 60), { low: -3, high: 2 });
    assert.deepEqual(rangeBetween(pan, 70, 80), { low: 2, high: 2 });
  });

  it("goes past a level as far as it does between two places, and not at all where it stays clear of it", () => {
    for (let level = -5; level <= 4; level++) {
      for (let from = -10; from < 70; from += 7) {
        const { low, high } = rangeBetween(pan, from, from + 15);
        assert.equal(highestOver(pan, level, from, from + 15), Math.max(level, high));
        assert.equal(lowestUnder(pan, level, from, from + 15), Math.min(level, low));
      }
    }
  });

  it("is straight when every reading is the same", () => {
    assert.equal(isStraight(pan), false);
    assert.equal(isStraight({ at: [0, 9], value: [4, 4] }), true);
    assert.deepEqual(moved(pan, 5).value, [5, 2, 7]);
  });
});

describe("a side with a riser", () => {
  const riser = { at: [0, 40, 40, 60], value: [10, 30, 5, 5] };

  it("has two values at its place: one up to it, one from it on", () => {
    assert.deepEqual([valueAt(riser, 40), valueAfter(riser, 40)], [30, 5]);
    assert.deepEqual([valueAfter(riser, 20), valueAfter(riser, 50)], [20, 5]);
  });

  it("has the range of what lies between two places alone", () => {
    assert.deepEqual(rangeBetween(riser, 20, 40), { low: 20, high: 30 });
    assert.deepEqual(rangeBetween(riser, 40, 60), { low: 5, high: 5 });
    assert.deepEqual(rangeBetween(riser, 39, 41), { low: 5, high: 30 });
  });

  it("is parted there", () => {
    assert.deepEqual(betweenRisers(riser), [
      { at: [0, 40], value: [10, 30] },
      { at: [40, 60], value: [5, 5] },
    ]);
    assert.deepEqual(betweenRisers(pan), [pan]);
  });

  it("keeps it as far as a level leaves it", () => {
    assert.deepEqual(atLeast(riser, 8), { at: [0, 40, 40, 60], value: [10, 30, 8, 8] });
  });
});

describe("a side held to a level", () => {
  it("has a corner wherever it crosses the level", () => {
    // From 0 down to -3 over 30 it is at -1 after 10; from -3 up to 2 over 30, after 12 more.
    assert.deepEqual(atLeast(pan, -1), { at: [0, 10, 30, 42, 60], value: [0, -1, -1, -1, 2] });
    assert.deepEqual(atMost(pan, -1), { at: [0, 10, 30, 42, 60], value: [-1, -1, -3, -1, -1] });
  });

  it("is the side itself where that keeps to the level", () => {
    assert.equal(atLeast(pan, -3), pan);
    assert.equal(atMost(pan, 2), pan);
  });

  it("is level where the side is beyond it everywhere", () => {
    assert.deepEqual(atLeast(pan, 2), { at: [0], value: [2] });
    assert.deepEqual(atMost(pan, -3), { at: [0], value: [-3] });
  });

  it("has no second corner where the side has one on the level", () => {
    const rising = { at: [0, 10, 20], value: [-5, 0, 5] };
    assert.deepEqual(atLeast(rising, 0), { at: [0, 10, 20], value: [0, 0, 5] });
    assert.deepEqual(atMost(rising, 0), { at: [0, 10, 20], value: [-5, 0, 0] });
  });

  it("rounds a crossing once to the nearest nanometre", () => {
    // 10 / 3 = 3.33 and 20 / 3 = 6.67.
    const rising = { at: [0, 10], value: [0, 3] };
    assert.deepEqual(atLeast(rising, 1), { at: [0, 3, 10], value: [1, 1, 3] });
    assert.deepEqual(atMost(rising, 2), { at: [0, 7, 10], value: [0, 2, 2] });
  });

  it("keeps its places rising where a crossing is rounded onto a corner", () => {
    // Across one nanometre there is no place for a corner between.
    assert.deepEqual(atLeast({ at: [0, 1], value: [0, 3] }, 1), { at: [0, 1], value: [1, 3] });
    assert.deepEqual(atLeast({ at: [0, 1], value: [0, 3] }, 2), { at: [0, 1], value: [2, 3] });
  });
});
