import assert from "node:assert/strict";
import { pieceCut } from "../../../src/takeoff/cuts/piece-cut.js";
import { cutWall, mm } from "../../support/cut-wall.js";

describe("the cut of a piece", () => {
  const cut = cutWall({
    size: "254 x 182",
    wall: [
      "bottom pan measured 0: 0, 250: 10 movement 0",
      "hole arm at 230, 75 across 20",
      "window sash {\nat 60, 80\nsize 60 x 60\nmovement 0\n}",
    ],
  });
  const kind = (label: string) => pieceCut(cut.wall, cut.laid, cut.piece(label).index).kind;

  it("is of the kind of its last cut in the order of work", () => {
    assert.equal(kind("B-01-01"), "taper");
    assert.equal(kind("B-01-03"), "taper");
    assert.equal(kind("B-02-01"), "notch");
    assert.equal(kind("B-02-03"), "hole");
    assert.equal(kind("B-03-03"), "crosscut");
    assert.equal(kind("B-04-02"), "rip");
    assert.equal(kind("B-04-03"), "corner");
  });

  it("has the piece's bounds within its tile", () => {
    assert.deepEqual(pieceCut(cut.wall, cut.laid, cut.piece("B-04-03").index).box, {
      left: 0,
      bottom: 0,
      right: mm(50),
      top: mm(26),
    });
  });

  it("tells all that is cut, not only the last", () => {
    const { fences, holes, notches, tapers } = pieceCut(
      cut.wall,
      cut.laid,
      cut.piece("B-02-03").index,
    );
    assert.deepEqual([fences.length, holes.length, notches.length, tapers.length], [1, 1, 0, 0]);
  });
});
