import assert from "node:assert/strict";
import { products, unique } from "../../../src/solver/room/products.js";

describe("products", () => {
  it("take one of each list in every way", () => {
    assert.deepEqual(products([[1, 2], [3], [4, 5]]), [
      [1, 3, 4],
      [1, 3, 5],
      [2, 3, 4],
      [2, 3, 5],
    ]);
    assert.deepEqual(products([]), [[]]);
    assert.deepEqual(products([[1], []]), []);
  });

  it("are made in part where there are too many", () => {
    const list = Array.from({ length: 500 }, (_, i) => i);
    const ways = products([list, list, list]);
    assert.ok(ways.length <= 20_000);
    assert.deepEqual(ways[0], [0, 0, 0]);
    assert.deepEqual(ways.at(-1), [499, 499, 499]);
  });
});

describe("unique", () => {
  it("keeps each place once, where it first comes", () => {
    assert.deepEqual(unique([3, 1, 3, 2, 1]), [3, 1, 2]);
  });
});
