import assert from "node:assert/strict";
import { tallyAt } from "../../../src/solver/room/local-tally.js";
import { fieldsOn, INCH, SASH } from "./small-room.js";

const { own } = fieldsOn(SASH, "across full tile from left").first;
const inches = (left: number, bottom: number, right: number, top: number) => ({
  left: left * INCH,
  bottom: bottom * INCH,
  right: right * INCH,
  top: top * INCH,
});

describe("the tiles that may meet a box", () => {
  it("are those under and round it, and no others", () => {
    // Tiles of 4 in from 0: the box of 12 to 28 and 13 to 21 takes four whole ones in the course from 16,
    // and leaves four of 1 in under it and four of 3 in over it.
    const tally = tallyAt(own, { x: 0, y: 0, first: 0 }, inches(12, 13, 28, 21), { cells: 0 });
    assert.deepEqual(tally, { slivers: 4, underHalf: 0, cuts: 8, tiles: 8 });
  });

  it("are none of a course under the first", () => {
    const tally = tallyAt(own, { x: 0, y: 0, first: 5 }, inches(12, 13, 28, 21), { cells: 0 });
    assert.deepEqual(tally, { slivers: 0, underHalf: 0, cuts: 4, tiles: 4 });
  });
});
