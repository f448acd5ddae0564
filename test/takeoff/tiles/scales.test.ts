import assert from "node:assert/strict";
import { counted, thresholds } from "../../../src/takeoff/tiles/scales.js";
import { randomFrom } from "../../support/random.js";

describe("sizes as they count in a bound", () => {
  it("fill the length when they leave too little, and are nothing when they are small", () => {
    assert.equal(counted(71, 100, 30), 100);
    assert.equal(counted(70, 100, 30), 70);
    assert.equal(counted(30, 100, 30), 30);
    assert.equal(counted(29, 100, 30), 0);
    assert.equal(counted(1, 100, 0), 1);
  });

  it("still fit a length together wherever they did, in 2000 cases", () => {
    const random = randomFrom(3);
    for (let n = 0; n < 2000; n++) {
      const sizes: number[] = [];
      for (let left = 100; left > 0;) {
        const size = random.integer(1, left);
        sizes.push(size);
        left -= random.chance(0.2) ? left : size;
      }
      for (const least of thresholds(sizes, 100, 50)) {
        const sum = sizes.reduce((total, size) => total + counted(size, 100, least), 0);
        assert.ok(sum <= 100, `${sizes.join()} from ${least}`);
      }
    }
  });

  it("are weighed where they begin to count otherwise, no more than asked for", () => {
    assert.deepEqual(thresholds([20, 70, 20], 100, 10), [0, 20, 31]);
    assert.deepEqual(thresholds([100], 100, 10), [0, 1]);
    const many = Array.from({ length: 49 }, (_, k) => k + 1);
    assert.ok(thresholds(many, 100, 7).length <= 8);
  });
});
