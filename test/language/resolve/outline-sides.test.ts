import assert from "node:assert/strict";
import { sidesOfOutline } from "../../../src/language/resolve/outline-sides.js";

const corners = (...pairs: (readonly [number, number])[]) => pairs.map(([x, y]) => ({ x, y }));
const pairs = (line: readonly { x: number; y: number }[]) => line.map(({ x, y }) => [x, y]);

describe("the sides of an outline", () => {
  it("are a line each where nothing steps: a gable", () => {
    const sides = sidesOfOutline(corners([0, 0], [60, 0], [60, 40], [30, 80], [0, 40]));
    assert.ok(typeof sides !== "number");
    assert.deepEqual(pairs(sides.top.line), [
      [0, 40],
      [30, 80],
      [60, 40],
    ]);
    assert.deepEqual(pairs(sides.left), [
      [0, 0],
      [0, 40],
    ]);
    assert.deepEqual([sides.bottom.steps, sides.top.steps], [[], []]);
  });

  it("take a slope for an upright side where it is steeper than 2 on 1", () => {
    const steep = sidesOfOutline(corners([0, 0], [60, 0], [60, 80], [39, 80], [0, 1]));
    assert.ok(typeof steep !== "number");
    assert.equal(steep.left.length, 3);
    const even = sidesOfOutline(corners([0, 0], [60, 0], [60, 80], [39, 80], [0, 2]));
    assert.ok(typeof even !== "number");
    assert.equal(even.left.length, 2);
  });

  it("are the corner at which it overhangs where they can't be held", () => {
    const notch = corners(
      [0, 0],
      [60, 0],
      [60, 30],
      [30, 30],
      [30, 50],
      [60, 50],
      [60, 80],
      [0, 80],
    );
    assert.equal(sidesOfOutline(notch), 3);
  });
});
