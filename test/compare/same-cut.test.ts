import assert from "node:assert/strict";
import { sameCut } from "../../src/compare/same-cut.js";
import { edited, told, WALL } from "./wall.js";

function piecesOf(text: string) {
  return told(text).solved.walls[0]!.lays[0]!.pieces;
}

const NOTCHED = edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 9 3/8"]);

describe("sameCut", () => {
  const pieces = piecesOf(WALL);
  const last = pieces.count - 1;

  it("takes whole tiles for alike, of whatever face", () => {
    assert.ok(sameCut(pieces, 0, piecesOf(edited(WALL, ["face 4 x 4", "face 4 x 3 7/8"])), 0));
  });

  it("tells a whole tile from a cut one, and sizes apart", () => {
    assert.ok(!sameCut(pieces, 0, pieces, last));
    assert.ok(sameCut(pieces, last - 1, pieces, last));
    const lower = piecesOf(edited(WALL, ["x 22 7/8", "x 22"]));
    assert.ok(!sameCut(pieces, last, lower, lower.count - 1));
  });

  it("compares shapes, wherever they stand", () => {
    const [one, up] = [piecesOf(NOTCHED), piecesOf(edited(NOTCHED, ["x 22 7/8", "x 27"]))];
    const other = piecesOf(edited(NOTCHED, ["at 17 5/8", "at 17 1/2"]));
    const [notch] = one.shapes.keys();
    assert.ok(notch !== undefined);
    assert.ok(sameCut(one, notch, up, notch));
    assert.ok(!sameCut(one, notch, other, notch));
    assert.ok(!sameCut(one, notch, pieces, last));
  });
});
