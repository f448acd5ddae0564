import assert from "node:assert/strict";
import { tilesOf, trimsOf } from "../../src/compare/quantities.js";
import { comparisonOf, edited, told, WALL } from "./wall.js";

describe("quantities", () => {
  it("count tiles that are begun, once however many parts they are cut into", () => {
    assert.equal(tilesOf(told(WALL).solved, "field"), 58);
    // A slot over the whole height of one tile's middle leaves two parts of it.
    const split = edited(
      WALL,
      ["at 16 5/8, 8 3/8", "at 5 1/4, 8 3/8"],
      ["size 8 1/8 x 4", "size 1 x 4"],
    );
    const { pieces } = told(split).solved.walls[0]!.lays[0]!;
    assert.equal(pieces.count, 61);
    assert.equal(tilesOf(told(split).solved, "field"), 60);
  });

  it("count lengths of trim", () => {
    const framed = edited(WALL, ["  niche shelf {", "  niche shelf {\n    frame nose butt"]);
    const runs = told(framed).solved.walls[0]!.trims;
    const pieces = runs.reduce((sum, run) => sum + run.pieces.length, 0);
    assert.ok(pieces >= 4);
    assert.equal(trimsOf(told(framed).solved, "nose"), pieces);
    assert.equal(trimsOf(told(framed).solved, "other"), 0);
  });

  it("give boxes where the plan says what a box holds", () => {
    const more = edited(WALL, ["box 25", "box 20"]);
    const [tile] = comparisonOf(WALL, more).quantities;
    assert.deepEqual(tile?.boxes, { before: 3, after: 3 });
    const [none] = comparisonOf(WALL, edited(WALL, ["  box 25\n", ""])).quantities;
    assert.deepEqual(none?.boxes, { before: 3, after: null });
  });
});
