import assert from "node:assert/strict";
import { wordAt } from "../../src/service/word-at.js";

/** The word where `|` stands. */
function word(marked: string): string {
  const offset = marked.indexOf("|");
  const text = marked.replace("|", "");
  const { start, end } = wordAt(text, offset);
  return text.slice(start, end);
}

describe("the word at a place", () => {
  it("is found from its beginning, its middle and its end", () => {
    for (const marked of ["a |back-wall_2 b", "a back|-wall_2 b", "a back-wall_2| b"]) {
      assert.equal(word(marked), "back-wall_2");
    }
  });

  it("has letters of every alphabet", () => {
    assert.equal(word("lay fliesen-grö|ße {"), "fliesen-größe");
  });

  it("is empty between words, and at the text's ends", () => {
    assert.equal(word("a | b"), "");
    assert.deepEqual(wordAt("", 0), { start: 0, end: 0 });
    assert.deepEqual(wordAt("a {", 3), { start: 3, end: 3 });
  });
});
