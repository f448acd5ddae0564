import assert from "node:assert/strict";
import { classify, classifyBox } from "../../src/solver/classify.js";
import { CUTS, ringOf, type Box } from "../../src/solver/index.js";

const TILE: Box = { left: 0, bottom: 0, right: 60, top: 30 };

function cut(outline: readonly number[] | Box, touched: "circle" | "slope" | null = null) {
  if ("left" in outline) return CUTS[classify({ bounds: outline, shape: null, touched }, TILE)];
  return CUTS[classify({ bounds: TILE, shape: { outline, holes: [] }, touched }, TILE)];
}

describe("how a piece is cut", () => {
  it("is not at all, at its end, ripped, or both, for a rectangle", () => {
    assert.equal(cut(TILE), "none");
    assert.equal(cut({ ...TILE, right: 59 }), "end");
    assert.equal(cut({ ...TILE, bottom: 1 }), "rip");
    assert.equal(cut({ ...TILE, left: 1, top: 29 }), "corner");
    assert.equal(CUTS[classifyBox(true, false)], "end");
  });

  it("is a notch for an L and a slot for any other square-cornered shape", () => {
    assert.equal(cut([0, 0, 60, 0, 60, 20, 40, 20, 40, 30, 0, 30]), "notch");
    assert.equal(cut([0, 0, 60, 0, 60, 30, 40, 30, 40, 20, 20, 20, 20, 30, 0, 30]), "slot");
  });

  it("is a scribe along a slope, also where the piece is notched", () => {
    assert.equal(cut([0, 0, 60, 2, 60, 30, 0, 30], "slope"), "scribe");
    assert.equal(cut([0, 0, 60, 2, 60, 20, 40, 20, 40, 30, 0, 30], "slope"), "scribe");
  });

  it("is a hole for a round bite, and for an opening inside the tile", () => {
    assert.equal(cut([0, 0, 60, 0, 60, 28, 58, 30, 0, 30], "circle"), "hole");
    const holes = [ringOf({ left: 10, bottom: 10, right: 20, top: 20 })];
    const part = { bounds: TILE, shape: { outline: ringOf(TILE), holes }, touched: null };
    assert.equal(CUTS[classify(part, TILE)], "hole");
  });
});
