import assert from "node:assert/strict";
import { Plans } from "./plans.js";

function foldsOf(text: string): string[] {
  const plans = new Plans();
  return plans.service
    .folds(plans.open(text))
    .map(({ startLine, endLine, kind }) => `${kind} ${startLine}-${endLine}`);
}

describe("folding", () => {
  it("folds blocks to the line before their brace, blocks in blocks too", () => {
    const text = "wall a {\n  size 1 x 2\n  lay t {\n    bond stack\n  }\n}\n";
    assert.deepEqual(foldsOf(text), ["block 0-4", "block 2-3"]);
  });

  it("folds runs of comment lines, a single one not", () => {
    assert.deepEqual(foldsOf("# a\n# b\n# c\nbed 1\n# d\n"), ["comment 0-2"]);
    assert.deepEqual(foldsOf("# a\r\n  # b"), ["comment 0-1"]);
  });

  it("folds nothing of one line, and an unclosed block to its end", () => {
    assert.deepEqual(foldsOf("rules { sliver 1 }\n"), []);
    assert.deepEqual(foldsOf("wall a {\n  size 1 x 2\n  top wall"), ["block 0-2"]);
  });
});
