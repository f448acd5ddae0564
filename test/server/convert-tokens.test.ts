import assert from "node:assert/strict";
import { encodeTokens, TOKEN_LEGEND } from "../../src/server/convert-tokens.js";

const at = (line: number, from: number, to: number) => ({
  start: { line, character: from },
  end: { line, character: to },
});

describe("names as the protocol's numbers", () => {
  it("are told from the one before: line, character, length, type, modifiers", () => {
    const tokens = [
      { kind: "let", declares: true, range: at(1, 4, 8) },
      { kind: "let", declares: false, range: at(1, 12, 16) },
      { kind: "wall", declares: true, range: at(3, 5, 9) },
    ] as const;
    const { tokenTypes } = TOKEN_LEGEND;
    const [variable, wall] = [tokenTypes.indexOf("variable"), tokenTypes.indexOf("class")];
    assert.deepEqual(encodeTokens(tokens), [
      1,
      4,
      4,
      variable,
      3,
      0,
      8,
      4,
      variable,
      2,
      2,
      5,
      4,
      wall,
      1,
    ]);
  });
});
