import assert from "node:assert/strict";
import fc from "fast-check";
import { boundsOf, doubleArea, doubleShapeArea, ringOf } from "../../src/solver/index.js";

describe("a shape", () => {
  const outline = ringOf({ left: 1, bottom: 2, right: 11, top: 7 });

  it("has its outline anticlockwise from its lowest, leftmost corner", () => {
    assert.deepEqual(outline, [1, 2, 11, 2, 11, 7, 1, 7]);
  });

  it("has twice its area exactly, past what a number holds", () => {
    const far = ringOf({ left: 0, bottom: 0, right: 3_000_000_001, top: 3_000_000_001 });
    assert.equal(doubleArea(far), 2n * 3_000_000_001n ** 2n);
  });

  it("has it exactly whatever corners it has, of small and of large parts", () => {
    const coordinate = fc.oneof(
      fc.integer({ min: -9, max: 9 }),
      fc.integer({ min: -3_000_000_000, max: 3_000_000_000 }),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 3 }), (corners) => {
        const whole = corners.map(([x, y]) => [BigInt(x), BigInt(y)] as const);
        const sum = whole.reduce((area, [x, y], i) => {
          const [u, v] = whole[(i + 1) % whole.length]!;
          return area + x * v - u * y;
        }, 0n);
        assert.equal(doubleArea(corners.flat()), sum);
      }),
    );
  });

  it("loses the area of its holes", () => {
    const hole = [3, 3, 3, 5, 6, 5, 6, 3];
    assert.equal(doubleShapeArea({ outline, holes: [hole] }), 2n * (50n - 6n));
  });

  it("knows its bounds", () => {
    assert.deepEqual(boundsOf([5, 1, 9, 4, 2, 6]), { left: 2, bottom: 1, right: 9, top: 6 });
  });
});
