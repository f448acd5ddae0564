import assert from "node:assert/strict";
import { piecesToCut } from "../../../src/takeoff/cuts/pieces-to-cut.js";
import { cutWall } from "../../support/cut-wall.js";

describe("the pieces of a wall that are to be cut", () => {
  const { wall, laid } = cutWall({ size: "254 x 130" });
  const toCut = piecesToCut(wall, "M");

  it("are every cut piece, course by course, and no whole tile", () => {
    assert.deepEqual(
      toCut.map(({ label }) => label),
      ["M-01-03", "M-02-03", "M-03-01", "M-03-02", "M-03-03"],
    );
    assert.equal(laid.pieces.count, 9);
  });

  it("name the piece of the solved plan that each is", () => {
    const last = toCut.at(-1)!;
    assert.deepEqual([last.index, last.course], [8, 3]);
    assert.equal(last.lay, laid);
  });

  it("keep the edges that show", () => {
    assert.deepEqual([...toCut.at(-1)!.factory].sort(), ["bottom", "left"]);
  });
});
