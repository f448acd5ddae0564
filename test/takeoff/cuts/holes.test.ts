import assert from "node:assert/strict";
import { biting, holesOf, isRim } from "../../../src/takeoff/cuts/holes.js";
import { cutWall, mm } from "../../support/cut-wall.js";

describe("the round holes of a piece", () => {
  const cut = cutWall({
    size: "254 x 102",
    wall: ["hole valve at 101, 20 across 30", "hole arm at 230, 75 across 20"],
  });
  const holes = (label: string) => holesOf(cut.laid, cut.piece(label).index);

  it("are told by their centres from the tile's left and bottom edges", () => {
    assert.deepEqual(holes("B-02-03"), [
      { name: "arm", fromLeft: mm(26), fromBottom: mm(23), across: mm(20), plate: null },
    ]);
  });

  it("may have their centres outside the tile", () => {
    assert.deepEqual(holes("B-01-01"), [
      { name: "valve", fromLeft: mm(101), fromBottom: mm(20), across: mm(30), plate: null },
    ]);
    assert.deepEqual(holes("B-01-02"), [
      { name: "valve", fromLeft: mm(-1), fromBottom: mm(20), across: mm(30), plate: null },
    ]);
  });

  it("are none of a piece that is cut otherwise", () => {
    assert.deepEqual(holes("B-01-03"), []);
  });

  it("make the edges on their rims, and no others", () => {
    const { index } = cut.piece("B-01-01");
    const rounds = biting(cut.laid, index);
    const { outline } = cut.laid.pieces.shapes.get(index)!;
    const rims = outline.filter((_, k) => k % 2 === 0 && isRim(rounds, outline, k)).length;
    // Bottom, left and top, and the two parts of the right side.
    assert.equal(outline.length / 2 - rims, 5);
  });
});
