import assert from "node:assert/strict";
import { piecesToCut } from "../../../src/takeoff/cuts/pieces-to-cut.js";
import { tileTakeoffs } from "../../../src/takeoff/tiles/tile-takeoff.js";
import { cutWall, mm } from "../../support/cut-wall.js";
import { takeText } from "../../support/takeoff-text.js";

describe("what a tile takes", () => {
  it("is its whole tiles and the tiles that are cut", () => {
    // Two crosscuts of 50 don't share a tile, since the saw takes 2; two rips of 24 do.
    const { solved, wall } = cutWall({ size: "254 x 128" }, { plan: ["saw { kerf 2 }"] });
    const [tile] = tileTakeoffs(solved, [piecesToCut(wall, "B")], mm(2));
    assert.equal(tile!.whole, 4);
    assert.deepEqual(
      tile!.cut.map(({ pieces }) => pieces.map(({ label }) => label)),
      [["B-01-03", "B-03-03"], ["B-02-03"], ["B-03-01", "B-03-02"]],
    );
    assert.deepEqual([tile!.needed, tile!.cutBound], [7, 3]);
  });

  it("comes to the faces of the tiles that are needed", () => {
    const { solved, wall } = cutWall({ size: "254 x 128" }, { plan: ["saw { kerf 2 }"] });
    const { set, offcuts, kerf, cutOut } = tileTakeoffs(solved, [piecesToCut(wall, "B")], mm(2))[0]!
      .doubleArea;
    const square = (area: bigint) => Number(area) / 2 / mm(1) / mm(1);
    assert.equal(square(set), 250 * 124);
    assert.equal(square(cutOut), 0);
    assert.equal(square(set + offcuts + kerf), 7 * 100 * 50);
  });

  it("is told for every tile that is laid, in the order of the plan, all walls together", () => {
    const wall = (name: string, tile: string) =>
      `wall ${name} {\nsize 254 x 50\nleft wall movement 0\nright wall movement 0\n` +
      `top wall movement 0\nbottom wall movement 0\nlay ${tile} {\nbond stack\njoint 2\n` +
      "across full tile from left\nup full course from bottom\n}\n}\n";
    const tile = (name: string) => `tile ${name} {\nface 100 x 50\nthickness 8\n}\n`;
    const { taken } = takeText(
      `plan "p"\nunits mm\n${["a", "b", "c"].map(tile).join("")}` +
        wall("one", "c") +
        wall("two", "a") +
        wall("three", "c"),
    );
    assert.deepEqual(
      taken.tiles.map(({ tile: { name }, whole, cut }) => [name, whole, cut.length]),
      [
        ["a", 2, 1],
        ["c", 4, 2],
      ],
    );
  });
});
