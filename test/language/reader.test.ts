import assert from "node:assert/strict";
import { buildTree } from "../../src/language/build-tree.js";
import { layOut } from "../../src/language/layout.js";
import { tableLines } from "../../src/language/line-table.js";
import { tokenise } from "../../src/language/lexer.js";
import { readingGrammar, readTokens } from "../../src/language/reader.js";
import { exampleNames, exampleText } from "../support/examples.js";

const laidOut = (text: string) => layOut(tokenise(text), tableLines(text));

describe("the reader", () => {
  it("reads a whole text alike with the grammar that stops at an error and the one that goes on", () => {
    for (const name of exampleNames()) {
      const { tokens } = laidOut(exampleText(name));
      const { cst, errors } = readTokens(tokens);
      const grammar = readingGrammar();
      grammar.input = tokens;
      const other = grammar.text();
      assert.deepEqual([errors, grammar.errors], [[], []]);
      assert.deepEqual(buildTree(cst, []), buildTree(other, []));
    }
  });

  it("goes on after an error", () => {
    const { cst, errors } = readTokens(laidOut("units\nbed 1/8\nbed\nunits mm\n").tokens);
    assert.equal(errors.length, 2);
    const kinds = buildTree(cst, []).map(({ kind }) => kind);
    assert.deepEqual(kinds.slice(-1), ["units"]);
    assert.ok(kinds.includes("bed"));
  });

  it("makes its grammar once", () => {
    assert.equal(readingGrammar(), readingGrammar());
  });
});
