import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { WallReading } from "../../../src/compare/comparison.js";
import { Lengths } from "../../../src/compare/words/lengths.js";
import { readingWords } from "../../../src/compare/words/reading-words.js";

describe("the words of a wall's reading", () => {
  const lengths = new Lengths("inch");
  const before: WallReading = { courses: 9, pieces: 80, cuts: 0, mitred: 0, smallest: null };
  const smallest = { width: NM_PER.inch, height: 3 * NM_PER.inch };

  it("say of the smallest cut, the cut pieces and the mitred edges what changed", () => {
    assert.deepEqual(
      readingWords({ before, after: { ...before, smallest, cuts: 9, mitred: 2 } }, lengths),
      ["smallest cut: none -> 1 in x 3 in", "cut pieces: 0 -> 9", "mitred edges: 0 -> 2"],
    );
    assert.deepEqual(readingWords({ before, after: { ...before, mitred: 2 } }, lengths), [
      "mitred edges: 0 -> 2",
    ]);
  });

  it("are none where nothing did", () => {
    assert.deepEqual(readingWords({ before, after: { ...before, pieces: 81 } }, lengths), []);
  });
});
