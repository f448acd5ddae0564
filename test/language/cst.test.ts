import assert from "node:assert/strict";
import type { CstNode, IToken } from "chevrotain";
import {
  nodeAt,
  nodesAt,
  spanOf,
  textOf,
  tokenAt,
  tokensAt,
  wordOf,
} from "../../src/language/cst.js";
import { Text } from "../../src/language/tokens.js";

const token: IToken = {
  image: '"A 2"',
  startOffset: 4,
  tokenType: Text,
  tokenTypeIdx: Text.tokenTypeIdx!,
  payload: undefined,
};
const inner: CstNode = { name: "inner", children: {} };
const node: CstNode = {
  name: "outer",
  children: { Text: [token], inner: [inner, inner] },
  location: { startOffset: 4, endOffset: 8 },
};

describe("the parser's tree", () => {
  it("gives its parts by their label, and none for a label that is missing", () => {
    assert.equal(tokenAt(node, "Text"), token);
    assert.deepEqual(nodesAt(node, "inner"), [inner, inner]);
    assert.deepEqual(tokensAt(node, "inner"), []);
    assert.equal(nodeAt(node, "Text"), undefined);
    assert.equal(tokenAt(node, "Name"), undefined);
  });

  it("gives spans that end just past the last character", () => {
    assert.deepEqual(spanOf(node), { start: 4, end: 9 });
    assert.deepEqual(wordOf(token), { text: '"A 2"', start: 4, end: 9 });
  });

  it("gives a text without its quotes", () => {
    assert.equal(textOf(token).text, "A 2");
    assert.equal(textOf({ ...token, image: '"open' }).text, "open");
  });
});
