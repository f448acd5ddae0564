import assert from "node:assert/strict";
import fc from "fast-check";
import { type Chain, valueAfter, valueAt } from "../../src/solver/chain.js";
import { highestOf } from "../../src/solver/envelope.js";

describe("the highest of several lines", () => {
  it("is a line that stands alone", () => {
    const line = { at: [0, 10], value: [3, 4] };
    assert.equal(highestOf([line]), line);
  });

  it("has a riser where one ends over another", () => {
    const high = { at: [0, 50], value: [10, 30] };
    const low = { at: [40, 100], value: [5, 5] };
    assert.deepEqual(highestOf([high, low]), { at: [0, 50, 50, 100], value: [10, 30, 5, 5] });
    assert.deepEqual(highestOf([low, high]), { at: [0, 50, 50, 100], value: [10, 30, 5, 5] });
  });

  it("bends where two cross, at the places on either side of where they do", () => {
    const falling = { at: [0, 30], value: [20, -10] };
    const rising = { at: [0, 30], value: [0, 15] };
    // They cross at 13 1/3, at 6 2/3: at 13 both are 7, rounded.
    assert.deepEqual(highestOf([falling, rising]), { at: [0, 13, 30], value: [20, 7, 15] });
    const steep = { at: [0, 30], value: [20, -40] };
    // At 8, at 4: a whole place. One more to the left, and they cross between two.
    assert.deepEqual(highestOf([steep, rising]), { at: [0, 8, 30], value: [20, 4, 15] });
    const steeper = { at: [0, 30], value: [19, -41] };
    assert.deepEqual(highestOf([steeper, rising]), { at: [0, 7, 8, 30], value: [19, 5, 4, 15] });
  });

  it("is nowhere under any of them, and at each place as high as one of them, but where two cross", () => {
    const step = fc.integer({ min: 1, max: 1000 });
    const anyLine = fc
      .tuple(
        fc.integer({ min: 0, max: 500 }),
        fc.array(fc.tuple(step, step), { minLength: 2, maxLength: 4 }),
      )
      .map(([from, points]): Chain => {
        let at = from;
        return {
          at: points.map(([by]) => (at += by)),
          value: points.map(([, value]) => value),
        };
      });
    fc.assert(
      fc.property(fc.array(anyLine, { minLength: 1, maxLength: 3 }), (lines) => {
        const base = { at: [0, 6000], value: [1, 1] };
        const all = [base, ...lines];
        const highest = highestOf(all);
        for (let place = 0; place < 6000; place += 7) {
          const over = all.filter(({ at }) => at[0]! <= place && at.at(-1)! > place);
          const wanted = Math.max(...over.map((line) => valueAfter(line, place)));
          const found = valueAfter(highest, place);
          assert.ok(found >= wanted - 1 && found <= wanted + 1, `${place}: ${found}, ${wanted}`);
        }
        assert.equal(valueAt(highest, 6000), 1);
      }),
      { numRuns: 200 },
    );
  });
});
