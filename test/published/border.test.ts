import assert from "node:assert/strict";
import { firstWall, solveClean } from "../support/solve-text.js";
import { freeWall } from "../support/free-wall.js";
import { wholeCount } from "../support/layout.js";

// Published: 144 x 18 in with a 2 in border of 4 x 2 in trim takes 36 of trim, and 144 tiles of
// 4 x 4 in for the field (homesteady.com/how-6047182, no joints).
describe("a field with a border along it (homesteady.com/how-6047182)", () => {
  const text =
    freeWall({
      face: "4 x 4",
      size: "144 x 18",
      joint: "0",
      wall: ["top free trim border"],
      across: "full tile from left",
      up: "full course from bottom",
    }) + "trim border {\n  face 4 x 2\n  thickness 0.25in\n}\n";

  it("takes 144 whole field tiles", () => {
    const { laid } = firstWall(solveClean(text));
    assert.equal(laid.pieces.count, 144);
    assert.equal(wholeCount(laid), 144);
  });

  it("takes 36 whole lengths of trim", () => {
    const { wall } = firstWall(solveClean(text));
    const pieces = wall.trims.flatMap((run) => run.pieces);
    assert.equal(pieces.length, 36);
    assert.ok(pieces.every((piece) => piece.whole));
  });
});
