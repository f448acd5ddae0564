import assert from "node:assert/strict";
import { folded } from "../../src/sheets/folded.js";

describe("folded", () => {
  it("leaves a line that fits as it is, drawn in as it was", () => {
    assert.deepEqual(folded("  wall back: tiled", 18, "    "), ["  wall back: tiled"]);
  });

  it("goes on in a new line, drawn in, before a word that would pass the width", () => {
    assert.deepEqual(folded("wall back: tiled", 15, "  "), ["wall back:", "  tiled"]);
  });

  it("never parts a word", () => {
    assert.deepEqual(folded("a verylongname b", 6, ""), ["a", "verylongname", "b"]);
  });

  it("never parts a length", () => {
    assert.deepEqual(folded("from 5 7/8 in, to 6+ in", 14, ""), ["from 5 7/8 in,", "to 6+ in"]);
    assert.deepEqual(folded("from 5 7/8 in", 9, ""), ["from", "5 7/8 in"]);
  });
});
