import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { tileOf } from "../../src/rules/tile-of.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { wallText } from "./wall-text.js";

describe("the tile of a piece", () => {
  it("is whole where the piece is cut", () => {
    const text = wallText({ bond: "running 1/2", size: "12 x 6" });
    const { laid } = firstWall(solveClean(text));
    const first = laid.pieces.courseStart[1]!;
    const tile = tileOf(laid, first);
    assert.deepEqual(
      [tile.left, tile.right, tile.bottom, tile.top].map((nm) => nm / NM_PER.inch),
      [3.0625 - 6.125, 3.0625 - 0.125, 3.125, 6.125],
    );
    assert.equal(laid.pieces.bounds[4 * first], 0);
  });
});
