import assert from "node:assert/strict";
import { readingGrammar, tokenise } from "../../src/language/reader.js";

describe("the reader", () => {
  it("cuts a text into tokens, spaces and comments left out", () => {
    const images = tokenise("size 5 7/8 x 2 # face\n").map(({ image }) => image);
    assert.deepEqual(images, ["size", "5 7/8", "x", "2", "\n"]);
  });

  it("makes its grammar once", () => {
    assert.equal(readingGrammar(), readingGrammar());
  });
});
