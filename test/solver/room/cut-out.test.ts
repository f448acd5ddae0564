import assert from "node:assert/strict";
import { cutOut } from "../../../src/solver/room/cut-out.js";
import { fieldsOn, INCH, MOVING } from "./small-room.js";

const fields = fieldsOn(MOVING, "across full tile from left");
const bare = fields.base(fields.drawn.stop).fields.own;

describe("cutting an opening out of a wall", () => {
  it("changes the tiles round it: by hand", () => {
    // 16 x 8 in from 12 and 13 in: four whole tiles go, four are 1 in high and four 3 in.
    const box = { left: 12 * INCH, bottom: 13 * INCH, right: 28 * INCH, top: 21 * INCH };
    assert.deepEqual(cutOut(bare, [box], { x: 0, y: 0, first: 0 }, { cells: 0 }), {
      slivers: 4,
      underHalf: 0,
      cuts: 8,
      tiles: -4,
    });
  });

  it("may take a cut that was there: the top course is cut to 2 in", () => {
    const box = { left: 12 * INCH, bottom: 28 * INCH, right: 28 * INCH, top: 30 * INCH };
    const { cuts, tiles } = cutOut(bare, [box], { x: 0, y: 0, first: 0 }, { cells: 0 });
    assert.deepEqual([cuts, tiles], [-4, -4]);
  });
});
