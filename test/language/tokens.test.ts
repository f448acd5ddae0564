import assert from "node:assert/strict";
import { Lexer } from "chevrotain";
import fc from "fast-check";
import { isWord, LEXED, Name, retype, Slash } from "../../src/language/tokens.js";
import { WORD } from "../../src/language/vocabulary.js";

const lexer = new Lexer([...LEXED], { positionTracking: "onlyOffset", ensureOptimizations: true });

function tokens(text: string): string[] {
  const { tokens: found, errors } = lexer.tokenize(text);
  assert.deepEqual(errors, []);
  return found.map(({ tokenType, image }) => `${tokenType.name} ${image}`);
}

describe("the lexer", () => {
  it("is well defined and never slow: Chevrotain's own checks pass", () => {
    assert.deepEqual(lexer.lexerDefinitionErrors, []);
  });

  it("tells an inch mark from the quotes of a text", () => {
    assert.deepEqual(tokens(`18" "3 x 6"`), [`Length 18"`, `Text "3 x 6"`]);
    assert.deepEqual(tokens(`box2"A 2"`), ["Name box2", `Text "A 2"`]);
  });

  it("tells the x of 60x96 from a name", () => {
    assert.deepEqual(tokens("60x96"), ["Length 60", "TightTimes x", "Length 96"]);
    assert.deepEqual(tokens("60 x 96"), ["Length 60", "Name x", "Length 96"]);
    assert.deepEqual(tokens("x96"), ["Name x96"]);
  });

  it("takes a dash into a name, but not between two lengths", () => {
    assert.deepEqual(tokens("north-wall 9 - 2"), [
      "Name north-wall",
      "Length 9",
      "Minus -",
      "Length 2",
    ]);
  });

  it("leaves comments and all kinds of space out", () => {
    assert.deepEqual(tokens("\ufeffa\t\u00a0\u2003b # c {"), ["Name a", "Name b"]);
  });

  it("knows the letters of other scripts", () => {
    assert.deepEqual(tokens("fenêtre Плитка 瓷砖 fene\u0302tre"), [
      "Name fenêtre",
      "Name Плитка",
      "Name 瓷砖",
      "Name fene\u0302tre",
    ]);
  });

  it("keeps what it doesn't know as strays, so that nothing is lost", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const { tokens: found, errors } = lexer.tokenize(text);
        assert.deepEqual(errors, []);
        for (const { image, startOffset } of found) {
          assert.equal(text.slice(startOffset, startOffset + image.length), image);
        }
      }),
    );
  });

  it("lets a word that has a meaning be a name", () => {
    const [token] = lexer.tokenize("movement").tokens;
    assert.equal(token!.tokenType, Name);
    assert.ok(isWord(retype(token!, WORD.movement)));
    assert.ok(!isWord(retype(token!, Slash)));
  });
});
