import assert from "node:assert/strict";
import { tokenise } from "../../src/language/lexer.js";
import { tableLines } from "../../src/language/line-table.js";
import { areBracesMatched, cutLines } from "../../src/language/lines.js";

/** Each line as its column, words and ending. */
function cut(text: string): string[] {
  const lines = cutLines(tokenise(text), tableLines(text));
  return lines.map(({ indent, tokens, ending }) =>
    [indent ?? "-", ...tokens.map(({ image }) => image), ending].join(" "),
  );
}

describe("cutting a text into lines", () => {
  it("ends a line at a line end, a `{` or a `}`", () => {
    assert.deepEqual(cut("a b\n  c {\n d\n}"), ["0 a b line", "2 c open", "1 d line", "0 close"]);
  });

  it("gives no column to what follows something on its line", () => {
    assert.deepEqual(cut("a { b } }"), ["0 a open", "- b close", "- close"]);
  });

  it("lets a `{` on the next line belong to the line before", () => {
    assert.deepEqual(cut("a\n\n{\nb\n}"), ["0 a open", "0 b line", "0 close"]);
  });

  it("leaves out lines with nothing on them", () => {
    assert.deepEqual(cut("\n\n# nothing\n"), []);
  });
});

describe("braces", () => {
  const matched = (text: string): boolean => areBracesMatched(tokenise(text));

  it("match when each has its partner", () => {
    assert.ok(matched("a { b { } } c { }"));
    assert.ok(!matched("a { b { }"));
    assert.ok(!matched("} a {"));
  });

  it("in texts and comments don't count", () => {
    assert.ok(matched('plan "{" # }'));
  });
});
