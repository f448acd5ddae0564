import assert from "node:assert/strict";
import { usualPaper } from "../../src/sheets/usual-paper.js";

describe("the usual paper", () => {
  it("is letter for inches and feet, else A4", () => {
    const papers = (["inch", "foot", "mm", "cm", "m"] as const).map(usualPaper);
    assert.deepEqual(papers, ["letter", "letter", "a4", "a4", "a4"]);
  });
});
