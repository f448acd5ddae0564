import assert from "node:assert/strict";
import { shardOf } from "../../src/cli/split-work.js";

describe("shardOf", () => {
  it("gives every item to one shard, neighbours together", () => {
    for (const [length, of] of [
      [0, 3],
      [2, 3],
      [10, 3],
      [1000, 7],
      [9, 1],
    ] as const) {
      const list = Array.from({ length }, (_, i) => i);
      const parts = Array.from({ length: of }, (_, i) => shardOf(list, { part: i + 1, of }));
      assert.deepEqual(parts.flat(), list);
      const sizes = parts.map((part) => part.length);
      assert.ok(Math.max(...sizes) - Math.min(...sizes) <= 1);
    }
  });

  it("gives all where no shard is named", () => {
    assert.deepEqual(shardOf([1, 2], null), [1, 2]);
  });
});
