import assert from "node:assert/strict";
import { LeastFirst } from "../../../src/solver/choose/least-first.js";
import { randomFrom } from "../../support/random.js";

describe("a heap", () => {
  it("hands out what it holds in order, whatever the order it came in", () => {
    const random = randomFrom(1);
    for (let length = 0; length < 40; length++) {
      const numbers = Array.from({ length }, () => random.integer(0, 20));
      const heap = new LeastFirst<number>((a, b) => a - b);
      for (const number of numbers) heap.push(number);
      const out = numbers.map(() => heap.pop());
      assert.deepEqual(
        out,
        [...numbers].sort((a, b) => a - b),
      );
      assert.equal(heap.pop(), undefined);
    }
  });

  it("takes more while it hands out", () => {
    const heap = new LeastFirst<number>((a, b) => a - b);
    heap.push(5);
    heap.push(3);
    assert.equal(heap.pop(), 3);
    heap.push(4);
    heap.push(9);
    assert.deepEqual([heap.pop(), heap.pop(), heap.pop()], [4, 5, 9]);
  });
});
