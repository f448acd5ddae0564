import assert from "node:assert/strict";
import { firstWall, solveClean } from "../support/solve-text.js";
import { freeWall } from "../support/free-wall.js";
import { wholeCount } from "../support/layout.js";

/** Pieces, and whole ones, of upright tiles beside each other on a square as high as they are long. */
function block(width: number, joint: number, long: number): [pieces: number, whole: number] {
  const text = freeWall({
    face: `${width} x ${long}`,
    size: `${long} x ${long}`,
    joint: `${joint}`,
    across: "full tile from left",
    up: "full course from bottom",
  });
  const { laid } = firstWall(solveClean(text));
  return [laid.pieces.count, wholeCount(laid)];
}

// Derived: tiles set upright beside each other are as wide as one is long, as a basketweave or a 2:1 herringbone on a grid wants,
// where L = 2 W + J; three of them where L = 3 W + 2 J. The language has no such bond: a block of one is laid by itself.
describe("a block of a basketweave (derived)", () => {
  for (const [many, width, joint] of [
    [2, 3, 1 / 8],
    [2, 2.875, 1 / 16],
    [3, 2, 1 / 16],
    [3, 1.875, 3 / 32],
  ] as const) {
    const long = many * width + (many - 1) * joint;

    it(`holds ${many} whole tiles of ${width} in with joints of ${joint} in where they are ${long} in long`, () => {
      assert.deepEqual(block(width, joint, long), [many, many]);
    });

    it(`cuts one of ${many} tiles of ${width} in that are 1/64 in shorter, and needs a strip where they are longer by a joint more`, () => {
      assert.deepEqual(block(width, joint, long - 1 / 64), [many, many - 1]);
      assert.deepEqual(block(width, joint, long + joint + 1 / 64), [many + 1, many]);
    });
  }
});
