import assert from "node:assert/strict";
import { isStraight, rangeBetween, valueAt } from "../../src/solver/index.js";
import { moved } from "../../src/solver/chain.js";

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

  it("is straight when every reading is the same", () => {
    assert.equal(isStraight(pan), false);
    assert.equal(isStraight({ at: [0, 9], value: [4, 4] }), true);
    assert.deepEqual(moved(pan, 5).value, [5, 2, 7]);
  });
});
