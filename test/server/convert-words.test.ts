import assert from "node:assert/strict";
import { FoldingRangeKind } from "vscode-languageserver";
import {
  completionKind,
  foldKind,
  selectionChain,
  symbolOf,
} from "../../src/server/convert-words.js";

const at = (character: number) => ({ line: 0, character });
const range = { start: at(0), end: at(9) };

describe("the service's words in the protocol's", () => {
  it("keep an outline's shape, and give a blank name its kind", () => {
    const inner = {
      kind: "lay",
      name: "lay t",
      detail: "",
      range,
      head: range,
      inside: [],
    } as const;
    const symbol = symbolOf({ ...inner, kind: "plan", name: " ", inside: [inner] });
    assert.equal(symbol.name, "plan");
    assert.equal(symbol.children?.[0]?.name, "lay t");
  });

  it("chain stretches from the smallest out", () => {
    const small = { start: at(2), end: at(3) };
    assert.deepEqual(selectionChain([small, range], at(2)), { range: small, parent: { range } });
    assert.deepEqual(selectionChain([], at(2)), { range: { start: at(2), end: at(2) } });
  });

  it("tell comments from blocks, and kinds of completions apart", () => {
    assert.deepEqual(foldKind("comment"), { kind: FoldingRangeKind.Comment });
    assert.deepEqual(foldKind("block"), {});
    assert.notEqual(completionKind("tile"), completionKind("unit"));
  });
});
