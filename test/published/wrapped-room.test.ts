import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { pieceBounds } from "../../src/solver/index.js";
import { findings } from "../rules/wall-text.js";
import { solveClean } from "../support/solve-text.js";

/**
 * Four walls of 60 in, each set after the one at its left and covering its end; 6 x 3 in tile in a stack
 * bond, joints of 1/16 in, and what stands on a wall is 1/8 in, as is each corner's joint. The first
 * wall is centred on a tile; the others go on with what is left of the tile at the corner, its joint
 * added. The first end, 2 9/16 in, and the next start, 3 7/16 in, are the worked example (derived).
 */
const STARTS = ["tile centred on wall", "11/16", "1 11/16", "2 11/16"];
const NAMES = ["one", "two", "three", "four"];

function room(): string {
  const walls = STARTS.map((start, i) => {
    const [before, after] = [NAMES[(i + 3) % 4]!, NAMES[(i + 1) % 4]!];
    const across = i === 0 ? start : `tile centred at ${start}`;
    return `wall ${NAMES[i]!} "Wall" {
  size 60 x 48
  left corner ${before} over movement 1/8
  right corner ${after} under movement 1/8
  lay field {
    bond stack
    joint 1/16
    across ${across}
    up joint at 24
  }
}`;
  });
  const tile = "tile field {\n  face 6 x 3\n  thickness 1/16\n  variation 1/64\n}";
  return `plan "Room"\nunits inch\nbed 1/16\n${tile}\n${walls.join("\n")}\n`;
}

describe("a bond wrapped round a room", () => {
  // By hand: a wall has 60 - 1/8 - 1/8 - 1/8 = 59 5/8 in of tile, but the first, whose left is counted
  // from its middle: 30 - 3 - 4 x 6 1/16 - 1/16 - 1/4 = 2 7/16 in. Then start + joint + n modules + end:
  //   3 7/16 + 1/16 + 9 x 6 1/16 + 1 9/16 = 59 5/8
  //   4 7/16 + 1/16 + 9 x 6 1/16 + 9/16   = 59 5/8
  //   5 7/16 + 1/16 + 8 x 6 1/16 + 5 5/8  = 59 5/8
  it("goes on tile by tile, as by hand", () => {
    const { solved } = solveClean(room());
    const ends = solved.walls.map(({ lays: [lay] }) => {
      const last = lay!.pieces.courseStart[1]! - 1;
      return [0, last].map((i) => {
        const { left, right } = pieceBounds(lay!.pieces, i);
        return (right - left) / NM_PER.inch;
      });
    });
    assert.deepEqual(ends, [
      [2 + 7 / 16, 2 + 9 / 16],
      [3 + 7 / 16, 1 + 9 / 16],
      [4 + 7 / 16, 9 / 16],
      [5 + 7 / 16, 5 + 5 / 8],
    ]);
  });

  it("breaks at the last corner alone, where it comes back to its beginning", () => {
    const told = findings(room(), "corner/bond-broken");
    assert.deepEqual(
      told.map(({ wall }) => wall),
      ["one"],
    );
    assert.match(
      told[0]!.message,
      /starts with 2 7\/16 in beside 5 5\/8 in of four; 3\/8 in or 1\/4 in/,
    );
    assert.deepEqual(findings(room(), "corner/courses-miss"), []);
  });
});
