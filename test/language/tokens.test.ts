import assert from "node:assert/strict";
import { tokenise } from "../../src/language/lexer.js";
import { isWord, Name, retype, Slash } from "../../src/language/tokens.js";
import { WORD } from "../../src/language/vocabulary.js";

describe("a token", () => {
  it("may be a name although its word has a meaning", () => {
    const [token] = tokenise("movement");
    assert.equal(token!.tokenType, Name);
    assert.ok(isWord(retype(token!, WORD.movement)));
    assert.ok(!isWord(retype(token!, Slash)));
  });
});
