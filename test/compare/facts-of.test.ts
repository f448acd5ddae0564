import assert from "node:assert/strict";
import { count, factOf, length, size, words } from "../../src/compare/facts-of.js";

describe("factOf", () => {
  const of = { of: "plan" } as const;

  it("is nothing where both say the same", () => {
    assert.deepEqual(factOf(of, "bed", length(5), length(5)), []);
    assert.deepEqual(factOf(of, "bed", size(1, 2), size(1, 2)), []);
    assert.deepEqual(factOf(of, "bed", null, null), []);
  });

  it("holds both states", () => {
    assert.deepEqual(factOf(of, "bed", null, length(5), "which"), [
      { subject: of, name: "bed", which: "which", before: null, after: { kind: "length", nm: 5 } },
    ]);
  });

  it("leaves out what isn't stated", () => {
    assert.deepEqual([length(null), words(null), count(null)], [null, null, null]);
    assert.deepEqual(count(3), { kind: "count", count: 3 });
    assert.deepEqual(words("off"), { kind: "words", words: "off" });
  });
});
