import assert from "node:assert/strict";
import { CUT_WORDS } from "../../src/service/cut-words.js";
import { CUTS } from "../../src/solver/index.js";

describe("the words for cuts", () => {
  it("are one for each cut that the solver knows, all different", () => {
    assert.deepEqual(Object.keys(CUT_WORDS).sort(), [...CUTS].sort());
    assert.equal(new Set(Object.values(CUT_WORDS)).size, CUTS.length);
  });

  it("call a piece that needs no saw a whole tile", () => {
    assert.equal(CUT_WORDS.none, "whole tile");
  });
});
