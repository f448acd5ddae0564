import assert from "node:assert/strict";
import fc from "fast-check";
import { subtract } from "../../../src/solver/clip/subtract.js";
import { doubleShapeArea, type Ring } from "../../../src/solver/index.js";
import { boxRing, subtract as reference } from "../../support/clipping.js";

const TILE: Ring = [0, 0, 100, 0, 100, 50, 0, 50];

function cut(obstacles: readonly Ring[], subject: Ring = TILE) {
  return subtract({ outline: subject, holes: [] }, obstacles);
}

function box(left: number, bottom: number, right: number, top: number): Ring {
  return boxRing({ left, bottom, right, top });
}

describe("subtract", () => {
  it("leaves a shape whole where nothing meets it", () => {
    assert.deepEqual(cut([box(200, 0, 300, 50)]), [{ outline: TILE, holes: [] }]);
  });

  it("cuts an L at a corner", () => {
    assert.deepEqual(cut([box(60, 30, 150, 90)]), [
      { outline: [0, 0, 100, 0, 100, 30, 60, 30, 60, 50, 0, 50], holes: [] },
    ]);
  });

  it("cuts a U in a side", () => {
    assert.deepEqual(cut([box(40, -10, 60, 20)]), [
      { outline: [0, 0, 40, 0, 40, 20, 60, 20, 60, 0, 100, 0, 100, 50, 0, 50], holes: [] },
    ]);
  });

  it("parts a tile that an obstacle crosses, lowest and leftmost first", () => {
    const parts = cut([box(40, -1, 60, 51)]);
    assert.deepEqual(
      parts.map((part) => part.outline),
      [box(0, 0, 40, 50), box(60, 0, 100, 50)],
    );
  });

  it("keeps an obstacle inside as a clockwise hole", () => {
    assert.deepEqual(cut([box(40, 20, 60, 30)]), [
      { outline: TILE, holes: [[40, 20, 40, 30, 60, 30, 60, 20]] },
    ]);
  });

  it("joins obstacles that overlap or touch into one cut", () => {
    const parts = cut([box(40, 0, 50, 20), box(50, 0, 60, 20), box(45, 0, 55, 20)]);
    assert.equal(parts.length, 1);
    assert.equal(parts[0]!.outline.length, 16);
  });

  it("keeps two parts that meet at a point apart", () => {
    const parts = cut([box(-1, 25, 50, 51), box(50, -1, 101, 25)]);
    assert.deepEqual(
      parts.map((part) => part.outline),
      [box(0, 0, 50, 25), box(50, 25, 100, 50)],
    );
  });

  it("keeps an island in a hole as a part of its own", () => {
    const ringed = cut([
      box(20, 10, 80, 20),
      box(20, 30, 80, 40),
      box(20, 10, 30, 40),
      box(70, 10, 80, 40),
    ]);
    assert.deepEqual(
      ringed.map((part) => [part.outline.length / 2, part.holes.length]),
      [
        [4, 1],
        [4, 0],
      ],
    );
  });

  it("has no corner on a straight run", () => {
    const parts = cut([box(-5, -5, 105, 10), box(-5, 5, 50, 10)]);
    assert.deepEqual(parts[0]!.outline, box(0, 10, 100, 50));
  });

  it("rounds a slope's crossing once to the nearest nanometre", () => {
    const slope: Ring = [0, -1, 100, -1, 100, 10, 0, 3];
    const [left] = cut([slope, box(33, -1, 200, 51)]);
    // 3 + 7 x 33 / 100 = 5.31
    assert.deepEqual(left!.outline, [0, 3, 33, 5, 33, 50, 0, 50]);
  });

  it("cuts shapes far from the origin as near it", () => {
    const far = 8_000_000_000_000;
    const [part] = cut(
      [box(far + 60, far + 30, far + 150, far + 90)],
      box(far, far, far + 100, far + 50),
    );
    assert.equal(doubleShapeArea(part!), 2n * (100n * 50n - 40n * 20n));
  });

  it("agrees with a clipping library on any set of rectangles", () => {
    const side = fc.integer({ min: -5, max: 60 });
    const rectangle = fc
      .tuple(side, side, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }))
      .map(([x, y, w, h]) => box(x, y, x + w, y + h));
    fc.assert(
      fc.property(fc.array(rectangle, { maxLength: 6 }), (obstacles) => {
        const area = (shapes: ReturnType<typeof cut>) =>
          shapes.map(doubleShapeArea).reduce((a, b) => a + b, 0n);
        assert.equal(area(cut(obstacles)), area(reference([TILE], obstacles)));
      }),
      { numRuns: 500 },
    );
  });
});
