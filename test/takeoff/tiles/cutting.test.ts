import assert from "node:assert/strict";
import { Cutting } from "../../../src/takeoff/tiles/cutting.js";
import { posesOf } from "../../../src/takeoff/tiles/demand.js";
import { EDGE } from "../../../src/takeoff/tiles/edges.js";

const FACE = { across: 100, up: 50, directional: false, kerf: 2 };
const piece = { label: "a", course: 1, width: 40, height: 50, needs: EDGE.left };

describe("tiles as they are cut up", () => {
  it("are opened whole, and known by their numbers", () => {
    const cutting = Cutting.of(FACE);
    assert.deepEqual([cutting.openTile().tile, cutting.openTile().tile], [0, 1]);
    assert.equal(cutting.tiles, 2);
  });

  it("keep what was cut from them, and what the saw took", () => {
    const cutting = Cutting.of(FACE);
    const [pose] = posesOf(piece, FACE);
    const rests = cutting.cut(cutting.openTile(), piece, pose!, "upright");
    assert.deepEqual(
      rests.map(({ box }) => box),
      [{ left: 42, bottom: 0, right: 100, top: 50 }],
    );
    assert.deepEqual(cutting.placed, [
      { tile: 0, demand: piece, box: { left: 0, bottom: 0, right: 40, top: 50 }, turns: 0 },
    ]);
    assert.equal(cutting.doubleKerf, 2n * 2n * 50n);
  });

  it("are copied as they stand", () => {
    const cutting = Cutting.of(FACE);
    const copy = cutting.copy();
    copy.cut(copy.openTile(), piece, posesOf(piece, FACE)[0]!, "upright");
    assert.deepEqual([cutting.tiles, cutting.placed.length, cutting.doubleKerf], [0, 0, 0n]);
    assert.deepEqual([copy.tiles, copy.placed.length], [1, 1]);
  });
});
