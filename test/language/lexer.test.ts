import assert from "node:assert/strict";
import { type IToken, Lexer } from "chevrotain";
import fc from "fast-check";
import { tokenise } from "../../src/language/lexer.js";
import { LEXED } from "../../src/language/tokens.js";
import { exampleNames, exampleText } from "../support/examples.js";

/** The reference: Chevrotain's own lexer, of the same kinds of tokens. */
const reference = new Lexer([...LEXED], { positionTracking: "onlyOffset" });

function tokens(text: string): string[] {
  return tokenise(text).map(({ tokenType, image }) => `${tokenType.name} ${image}`);
}

function assertSame(text: string): void {
  const { tokens: wanted, errors } = reference.tokenize(text);
  assert.deepEqual(errors, []);
  const found = tokenise(text);
  assert.deepEqual(found.map(placed), wanted.map(placed));
  for (const { image, startOffset, endOffset } of found) {
    assert.equal(text.slice(startOffset, endOffset! + 1), image);
  }
}

const placed = ({ tokenType, image, startOffset }: IToken) => [tokenType.name, startOffset, image];

/** Words, numbers and marks of the language, alone and run together. */
const WORDS = [
  ...Array.from("{}(),:=%+-*/\"'#x. \t\r\n"),
  "5 7/8",
  "60x96",
  '18"',
  "1' 6 1/2",
  "300mm",
  "9 %",
  "wall",
  "x96",
  "north-wall",
  "fenêtre",
  "瓷砖",
];

describe("the lexer", () => {
  it("finds what Chevrotain's own finds, in every example", () => {
    assert.deepEqual(reference.lexerDefinitionErrors, []);
    for (const name of exampleNames()) assertSame(exampleText(name));
  });

  it("finds what Chevrotain's own finds, in any text", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), assertSame), { numRuns: 300 });
    const run = fc.array(fc.constantFrom(...WORDS), { maxLength: 30 });
    fc.assert(
      fc.property(run, (words) => assertSame(words.join(""))),
      { numRuns: 1000 },
    );
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
    assert.deepEqual(tokens("5 ; é\u0000 “"), [
      "Length 5",
      "Stray ;",
      "Name é",
      "Stray \u0000",
      "Stray “",
    ]);
  });

  it("begins each text anew", () => {
    assert.deepEqual(tokens("size 5"), tokens("size 5"));
  });
});
