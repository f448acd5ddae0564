import assert from "node:assert/strict";
import fc from "fast-check";
import { spreadLabels } from "../../../src/sheets/print/spread-labels.js";

describe("labels along a strip", () => {
  it("stay where they wish to be when there is room", () => {
    const wishes = [10, 40, 80].map((middle) => ({ middle, height: 10 }));
    assert.deepEqual(spreadLabels(wishes, 100), [10, 40, 80]);
  });

  it("move apart where two marks are close", () => {
    const wishes = [20, 22].map((middle) => ({ middle, height: 10 }));
    assert.deepEqual(spreadLabels(wishes, 100), [20, 30]);
  });

  it("stay on the strip at both ends", () => {
    const wishes = [0, 1, 99, 100].map((middle) => ({ middle, height: 10 }));
    assert.deepEqual(spreadLabels(wishes, 100), [5, 15, 85, 95]);
  });

  it("never lie on each other where there is room for all", () => {
    const wish = fc.record({
      middle: fc.integer({ min: 0, max: 200 }),
      height: fc.integer({ min: 1, max: 10 }),
    });
    fc.assert(
      fc.property(fc.array(wish, { maxLength: 20 }), (unsorted) => {
        const wishes = [...unsorted].sort((a, b) => a.middle - b.middle);
        const places = spreadLabels(wishes, 200);
        let free = 0;
        wishes.forEach(({ height }, i) => {
          assert.ok(places[i]! - height / 2 >= free - 1e-9);
          free = places[i]! + height / 2;
        });
        assert.ok(free <= 200 + 1e-9);
      }),
    );
  });
});
