import assert from "node:assert/strict";
import { plateWords } from "../../src/sheets/plate-words.js";

describe("the words for a plate", () => {
  it("are one length of a round one, two of one with four sides", () => {
    const print = (nm: number): string => `${nm} nm`;
    assert.equal(plateWords({ kind: "round", across: 3 }, print), "3 nm");
    assert.equal(plateWords({ kind: "square", across: 3, up: 2 }, print), "3 nm x 2 nm");
  });
});
