import assert from "node:assert/strict";
import { compareBounds, pairsInOrder, sumOf } from "../../../src/solver/choose/pairs-in-order.js";
import { randomFrom } from "../../support/random.js";

describe("pairs of starts", () => {
  it("come by what they cost at least, each of them once", () => {
    const random = randomFrom(1);
    const some = (name: string) =>
      Array.from({ length: random.integer(1, 9) }, (_, i) => ({
        name: `${name}${i}`,
        bound: {
          slivers: random.integer(0, 2),
          underHalf: random.integer(0, 2),
          imbalance: random.integer(0, 9),
        },
      })).sort((a, b) => compareBounds(a.bound, b.bound));
    for (let n = 0; n < 50; n++) {
      const [across, up] = [some("x"), some("y")];
      const pairs = [...pairsInOrder(across, up)];
      const names = new Set(pairs.map(({ x, y }) => x.name + y.name));
      assert.equal(names.size, across.length * up.length);
      assert.equal(pairs.length, names.size);
      pairs.forEach(({ x, y, bound }, i) => {
        assert.deepEqual(bound, sumOf(x.bound, y.bound));
        assert.ok(i === 0 || compareBounds(pairs[i - 1]!.bound, bound) <= 0);
      });
    }
  });

  it("are none where a direction has no start", () => {
    assert.deepEqual([...pairsInOrder([], [])], []);
  });
});
