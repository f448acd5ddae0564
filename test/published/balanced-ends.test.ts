import assert from "node:assert/strict";
import { firstWall, solveClean } from "../support/solve-text.js";
import { freeWall } from "../support/free-wall.js";
import { inches, widthsOf } from "../support/layout.js";

// Published: a whole 24 in tile at the left and 1-1/2 in left over at the right become
// (24 + 1.5) / 2 = 12-3/4 in at both ends (fcimag.com/articles/95138).
describe("a whole tile and a strip are balanced (fcimag.com/articles/95138)", () => {
  for (const joint of [0, 1 / 16, 1 / 8, 3 / 16]) {
    const size = `${3 * 24 + 1.5 + 3 * joint} x 24`;
    const wall = { face: "24 x 24", size, joint: `${joint}`, up: "full course from bottom" };

    it(`full tile from left leaves 1-1/2 in, joint ${joint}`, () => {
      const { laid } = firstWall(solveClean(freeWall({ ...wall, across: "full tile from left" })));
      assert.deepEqual(widthsOf(laid), [24, 24, 24, 1.5].map(inches));
    });

    it(`a joint centred on the wall gives 12-3/4 in at both ends, joint ${joint}`, () => {
      const text = freeWall({ ...wall, across: "joint centred on wall" });
      const { laid } = firstWall(solveClean(text));
      assert.deepEqual(widthsOf(laid), [12.75, 24, 24, 12.75].map(inches));
    });

    it(`the solver, left to choose, gives 12-3/4 in at both ends, joint ${joint}`, () => {
      const { laid } = firstWall(solveClean(freeWall(wall)));
      assert.deepEqual(widthsOf(laid), [12.75, 24, 24, 12.75].map(inches));
    });
  }
});

// Published: cuts of 1-3/4 and 1-1/4 in with an 11-3/4 in tile between become two of 7-3/8 in
// (floortrendsmag.com/articles/111279). The published figure leaves out the joint between the two:
// with it each is (14-3/4 + J) / 2.
describe("two narrow cuts round a tile become two wide ones (floortrendsmag.com/articles/111279)", () => {
  const wall = (joint: number) => ({
    face: "11 3/4 x 11 3/4",
    size: `${1.75 + 11.75 + 1.25 + 2 * joint} x 11 3/4`,
    joint: `${joint}`,
    up: "full course from bottom",
  });
  const widths = (joint: number, across: string) =>
    widthsOf(firstWall(solveClean(freeWall({ ...wall(joint), across }))).laid);

  it("the narrow cuts are those published", () => {
    const middle = `tile centred at ${1.75 + 1 / 8 + 11.75 / 2}`;
    assert.deepEqual(widths(1 / 8, middle), [1.75, 11.75, 1.25].map(inches));
  });

  it("without a joint both are 7-3/8 in, the figure published", () => {
    assert.deepEqual(widths(0, "joint centred on wall"), [7.375, 7.375].map(inches));
  });

  it("with a joint of 1/8 in both are 7-7/16 in, the figure with the joint counted (derived)", () => {
    assert.deepEqual(widths(1 / 8, "joint centred on wall"), [7.4375, 7.4375].map(inches));
  });
});
