import assert from "node:assert/strict";
import { firstWall, solveClean } from "../support/solve-text.js";
import { freeWall } from "../support/free-wall.js";
import { inches, widthsOf } from "../support/layout.js";

// Published: with N whole tiles T in a course of length L and no joints, take one away and divide
// what is left: end = (L - N T + T) / 2 (NAVEDTRA 14044 p. 7-23).
describe("the half-tile rule (NAVEDTRA 14044 p. 7-23)", () => {
  const cases = [
    { length: 60, tile: 4.25 },
    { length: 97.5, tile: 6 },
    { length: 100, tile: 8 },
    { length: 33, tile: 12 },
    { length: 131.25, tile: 11.75 },
  ];
  for (const { length, tile } of cases) {
    it(`${tile} in tile on ${length} in`, () => {
      const whole = Math.floor(length / tile);
      const end = (length - whole * tile + tile) / 2;
      const across = whole % 2 === 0 ? "tile centred on wall" : "joint centred on wall";
      const text = freeWall({
        face: `${tile} x ${tile}`,
        size: `${length} x ${tile}`,
        joint: "0",
        across,
        up: "full course from bottom",
      });
      const middle = Array.from({ length: whole - 1 }, () => tile);
      const { laid } = firstWall(solveClean(text));
      assert.deepEqual(widthsOf(laid), [end, ...middle, end].map(inches));
    });
  }
});

// Published: n = (W - 4 mm) / (T + J). Where its whole part is odd (5.4) a joint goes in the middle:
// 4 whole and 2 x 0.7; where it is even (4.7) a tile does: 3 whole and 2 x 0.85
// (tilersforums.com/threads/6815). Its figures are in modules: an end with half of its joint is 0.7
// of tile and joint together.
describe("tile or joint in the middle (tilersforums.com/threads/6815)", () => {
  const cases = [
    { modules: 5.4, across: "joint centred on wall", whole: 4, end: 0.7 },
    { modules: 4.7, across: "tile centred on wall", whole: 3, end: 0.85 },
  ];
  for (const { modules, across, whole, end } of cases) {
    for (const joint of [0, 2, 4]) {
      it(`${modules} tiles of 200 mm, joint ${joint} mm: ${whole} whole and 2 x ${end}`, () => {
        const module = 200 + joint;
        const text = freeWall({
          units: "mm",
          face: "200 x 200",
          size: `${(modules * module + 4).toFixed(1)} x 200`,
          joint: `${joint}`,
          wall: ["left wall movement 2", "right wall movement 2"],
          across,
          up: "full course from bottom",
        });
        const widths = widthsOf(firstWall(solveClean(text)).laid);
        assert.equal(widths.filter((width) => width === 200_000_000).length, whole);
        assert.equal(widths.length, whole + 2);
        for (const width of [widths[0]!, widths.at(-1)!]) {
          assert.equal(width + (joint * 1_000_000) / 2, Math.round(end * module * 1_000_000));
        }
      });
    }
  }
});
