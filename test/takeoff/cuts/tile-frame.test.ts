import assert from "node:assert/strict";
import { boundsWithinTile, tileFrame, withinTile } from "../../../src/takeoff/cuts/tile-frame.js";
import { cutWall, mm } from "../../support/cut-wall.js";

describe("the tile that a piece is cut from", () => {
  const { laid, piece } = cutWall({ size: "150 x 80", across: "full tile from right" });

  it("stands where the lattice has it, though its corner is cut away", () => {
    assert.deepEqual(tileFrame(laid, piece("B-01-01").index), { left: mm(-52), bottom: 0 });
    assert.deepEqual(tileFrame(laid, piece("B-02-01").index), { left: mm(-52), bottom: mm(52) });
  });

  it("is where the piece's bounds are measured from", () => {
    assert.deepEqual(boundsWithinTile(laid, piece("B-02-01").index), {
      left: mm(52),
      bottom: 0,
      right: mm(100),
      top: mm(28),
    });
  });

  it("moves a box as it is", () => {
    const box = { left: 5, bottom: 6, right: 9, top: 8 };
    assert.deepEqual(withinTile(box, { left: 2, bottom: -1 }), {
      left: 3,
      bottom: 7,
      right: 7,
      top: 9,
    });
  });
});
