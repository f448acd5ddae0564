import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { optionFigures } from "../../../src/sheets/options/option-figures.js";
import { takeoff } from "../../../src/takeoff/index.js";
import { bench, STATED } from "./bench.js";

describe("optionFigures", () => {
  const { solved, options } = bench(STATED);
  const own = options.find(({ had }) => had)!;

  it("has the smallest cut as the plan's reading has it", () => {
    const { smallest } = optionFigures(solved.plan, own);
    // The tile left of the niche begins at 12 3/8, and the niche's joint at 12 15/16.
    assert.equal(smallest?.width, 0.5625 * NM_PER.inch);
  });

  it("counts cut pieces once each, notched ones too", () => {
    const { cutPieces } = optionFigures(solved.plan, own);
    const cut = own.lay.pieces.cut.filter((each) => each !== 0).length;
    assert.equal(cutPieces, cut);
    assert.ok(own.score.cuts > cut);
  });

  it("needs as many tiles as the takeoff says, for a plan of this wall alone", () => {
    const { tilesNeeded } = optionFigures(solved.plan, own);
    assert.equal(tilesNeeded, takeoff(solved).tiles[0]!.needed);
    assert.ok(tilesNeeded <= own.score.tiles);
  });
});
