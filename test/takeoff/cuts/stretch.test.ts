import assert from "node:assert/strict";
import { stretchAlong } from "../../../src/takeoff/cuts/stretch.js";
import { cutWall, mm } from "../../support/cut-wall.js";

describe("where a piece runs straight along a side of its bounds", () => {
  it("is all of the side, of a plain rectangle", () => {
    const { laid, piece } = cutWall({ size: "150 x 50" });
    const { index } = piece("B-01-02");
    assert.deepEqual(stretchAlong(laid.pieces, index, "top"), { from: mm(102), to: mm(150) });
    assert.deepEqual(stretchAlong(laid.pieces, index, "right"), { from: 0, to: mm(50) });
  });

  it("ends where a notch begins", () => {
    const { laid, piece } = cutWall({
      size: "202 x 50",
      wall: ["window sash {\nat 80, 30\nsize 60 x 20\nmovement 0\n}"],
    });
    const { index } = piece("B-01-01");
    assert.deepEqual(stretchAlong(laid.pieces, index, "top"), { from: 0, to: mm(80) });
    assert.deepEqual(stretchAlong(laid.pieces, index, "right"), { from: 0, to: mm(30) });
  });

  it("is nothing, where a slope ends in a corner", () => {
    const { laid, piece } = cutWall({
      size: "100 x 50",
      wall: ["top wall measured 0: 0, 100: -20 movement 0"],
      up: "joint at -1",
    });
    const { index } = piece("B-01-01");
    assert.equal(stretchAlong(laid.pieces, index, "top"), null);
    assert.deepEqual(stretchAlong(laid.pieces, index, "right"), { from: 0, to: mm(30) });
  });
});
