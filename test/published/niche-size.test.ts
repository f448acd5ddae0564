import assert from "node:assert/strict";
import { check } from "../../src/rules/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { freeWall } from "../support/free-wall.js";
import { wholeCount } from "../support/layout.js";

// Derived: an opening for k whole tiles is k T + (k + 1) J: 12-1/4 in for one 12 in tile at 1/8 in,
// 12-5/16 in for four of 3 in at 1/16 in.
describe("a niche for whole tiles (derived)", () => {
  const cases = [
    { tile: 12, joint: 1 / 8, many: 1, size: 12.25 },
    { tile: 3, joint: 1 / 16, many: 4, size: 12.3125 },
  ];
  for (const { tile, joint, many, size } of cases) {
    const columns = many + 4;
    const wall = columns * tile + (columns - 1) * joint;
    const at = 2 * tile + joint;
    const plan = (opening: number) =>
      solveClean(
        freeWall({
          face: `${tile} x ${tile}`,
          size: `${wall} x ${wall}`,
          joint: `${joint}`,
          wall: [
            "niche shelf {",
            `  at ${at}, ${at}`,
            `  size ${opening} x ${opening}`,
            "  movement 0",
            "}",
          ],
          across: "full tile from left",
          up: "full course from bottom",
        }),
      );
    const offJoint = (opening: number) =>
      check(plan(opening).solved).filter(({ code }) => code === "opening/off-joint").length;

    it(`${size} in takes ${many} x ${many} whole tiles of ${tile} in and cuts none`, () => {
      assert.equal(many * tile + (many + 1) * joint, size);
      const { laid } = firstWall(plan(size));
      assert.equal(laid.pieces.count, columns ** 2 - many ** 2);
      assert.equal(wholeCount(laid), laid.pieces.count);
    });

    it(`1/64 in more cuts the tiles beside it, ${tile} in tile`, () => {
      const { laid } = firstWall(plan(size + 1 / 64));
      const cut = laid.pieces.count - wholeCount(laid);
      assert.equal(cut, 2 * many + 1, "those right of it, those over it and the corner one");
    });

    it(`is silent about ${size} in and tells 1/2 in less, ${tile} in tile`, () => {
      assert.equal(offJoint(size), 0);
      assert.ok(offJoint(size - 1 / 2) > 0);
    });
  }
});
