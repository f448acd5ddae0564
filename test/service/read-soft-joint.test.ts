import assert from "node:assert/strict";
import { Figures } from "../../src/service/figures.js";
import { readSoftJoint } from "../../src/service/read-soft-joint.js";
import { boundsOf } from "../../src/solver/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText } from "../rules/wall-text.js";

const INCH = 25_400_000;

/** What is read at a place of a wall of 60 x 30 in; the soft joint over course 4 lies from 12 3/8 to 12 1/2. */
function readAt(x: number, y: number) {
  const lay = "movement joint over course 4";
  const { wall } = firstWall(solveClean(wallText({ size: "60 x 30", lay })));
  return readSoftJoint(
    wall,
    ({ outline }) => {
      const { left, right, bottom, top } = boundsOf(outline);
      return x * INCH >= left && x * INCH <= right && y * INCH >= bottom && y * INCH <= top;
    },
    new Figures("inch"),
  );
}

describe("what is read on a soft joint of the tile", () => {
  it("is which one it is, its width and its length, with its place in the text", () => {
    const read = readAt(30, 12 + 7 / 16);
    assert.deepEqual(
      [read!.title, read!.facts],
      [
        "Soft joint over course 4",
        [
          ["width", "1/8 in"],
          ["length", "60 in"],
        ],
      ],
    );
    assert.ok(read!.origin.range.start.line > 0);
  });

  it("is nothing beside it", () => {
    assert.equal(readAt(30, 13), null);
  });
});
