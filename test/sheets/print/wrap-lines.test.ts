import assert from "node:assert/strict";
import fc from "fast-check";
import { wrapLines } from "../../../src/sheets/print/wrap-lines.js";

/** Every letter is one wide. */
const widthOf = (text: string): number => Array.from(text).length;

describe("lines", () => {
  it("break at spaces", () => {
    assert.deepEqual(wrapLines("set the first course dry", 10, widthOf), [
      "set the",
      "first",
      "course dry",
    ]);
  });

  it("keep a figure with its fraction and its unit", () => {
    assert.deepEqual(wrapLines("fence at 4 3/4 in", 12, widthOf), ["fence at", "4 3/4 in"]);
    assert.deepEqual(wrapLines("fence at 120.5 mm", 12, widthOf), ["fence at", "120.5 mm"]);
  });

  it("begin anew at a line feed", () => {
    assert.deepEqual(wrapLines("one\ntwo three", 20, widthOf), ["one", "two three"]);
  });

  it("break a word that is too wide between its letters", () => {
    assert.deepEqual(wrapLines("a abcdefgh b", 3, widthOf), ["a", "abc", "def", "gh", "b"]);
  });

  it("are one empty line where there is no word", () => {
    assert.deepEqual(wrapLines("", 10, widthOf), [""]);
  });

  it("lose no letter, and are never wider than they may be", () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 30 }), (text, width) => {
        const lines = wrapLines(text, width, widthOf);
        const letters = (words: string): string => words.replace(/\s/g, "");
        assert.equal(letters(lines.join("")), letters(text));
        for (const line of lines) assert.ok(widthOf(line) <= width, line);
      }),
    );
  });
});
