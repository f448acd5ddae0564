import assert from "node:assert/strict";
import { optionLetter } from "../../../src/sheets/options/option-letter.js";

describe("optionLetter", () => {
  it("is a letter each, in their order", () => {
    assert.deepEqual([0, 1, 5].map(optionLetter), ["A", "B", "F"]);
  });
});
