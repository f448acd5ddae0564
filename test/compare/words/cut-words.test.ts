import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { CutPiece } from "../../../src/compare/comparison.js";
import { bothCuts, cutWords } from "../../../src/compare/words/cut-words.js";
import { Lengths } from "../../../src/compare/words/lengths.js";

const INCH = NM_PER.inch;

describe("the words of cuts", () => {
  const lengths = new Lengths("inch");
  const piece = (cut: CutPiece["cut"], width: number, height: number): CutPiece => ({
    cut,
    width: { least: width * INCH, most: width * INCH },
    height: { least: height * INCH, most: height * INCH },
    notch: cut === "notch" ? { across: INCH, up: 2 * INCH } : null,
    place: "in the field",
  });

  it("name the cut by what is left", () => {
    const told = (cut: CutPiece["cut"]) => cutWords(piece(cut, 5, 3), lengths);
    assert.equal(told("none"), "whole");
    assert.equal(told("end"), "5 in wide");
    assert.equal(told("rip"), "3 in high");
    assert.equal(told("corner"), "5 in x 3 in");
    assert.equal(told("notch"), "L cut 5 in x 3 in less 1 in x 2 in");
    assert.equal(told("slot"), "U cut 5 in x 3 in");
    assert.equal(told("scribe"), "scribed 5 in x 3 in");
    assert.equal(told("hole"), "5 in x 3 in with its hole");
  });

  it("tell of two rectangles the side alone that differs", () => {
    const both = (before: CutPiece, after: CutPiece) => bothCuts(before, after, lengths);
    assert.deepEqual(both(piece("corner", 5, 3), piece("corner", 4, 3)), [
      "5 in wide",
      "4 in wide",
    ]);
    assert.deepEqual(both(piece("corner", 5, 3), piece("rip", 5, 2)), ["3 in high", "2 in high"]);
    assert.deepEqual(both(piece("none", 6, 3), piece("rip", 6, 2)), ["whole", "2 in high"]);
    assert.deepEqual(both(piece("corner", 5, 3), piece("slot", 5, 3)), [
      "5 in x 3 in",
      "U cut 5 in x 3 in",
    ]);
  });
});
