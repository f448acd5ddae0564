import assert from "node:assert/strict";
import { parse } from "../../src/language/parse.js";
import { parseUsed } from "../../src/language/parse-used.js";

describe("the text of a used file", () => {
  it("is read as any text is", () => {
    const text = "units mm\nlet a = 5 +\ntile t {\n";
    assert.deepEqual(parseUsed(text).statements, parse(text).statements);
    assert.deepEqual(parseUsed(text).problems, parse(text).problems);
  });

  it("is read once as long as it is among the last", () => {
    const tree = parseUsed("let a = 1\n");
    assert.equal(parseUsed("let a = 1\n"), tree);
    for (let i = 0; i < 16; i++) parseUsed(`let b = ${i}\n`);
    assert.notEqual(parseUsed("let a = 1\n"), tree);
  });

  it("is not kept where it is very long", () => {
    const text = "let a = 1\n".repeat(20_000);
    assert.notEqual(parseUsed(text), parseUsed(text));
  });
});
