import assert from "node:assert/strict";
import { EOF } from "chevrotain";
import { Colon, Length, LineEnd, Name } from "../../src/language/tokens.js";
import { joinWords, nameToken, shorten, wantedMessages } from "../../src/language/wanted.js";
import { told } from "./telling.js";

const word = {
  image: "runing",
  tokenType: Name,
  startOffset: 0,
  tokenTypeIdx: 0,
  payload: undefined,
};

describe("what a line's error says", () => {
  it("is what was found and what was wanted", () => {
    const [message] = told("let a 5\n");
    assert.equal(message, "syntax/unexpected [5] found `5`, wanted `=`");
  });

  it("guesses a word that could have gone on where the line should end", () => {
    const [message] = told("wall a {\n  size 4 x 5\n  top ceiling movment 1\n}\n");
    assert.match(message!, /wanted the end of the line; did you mean `movement`\?$/);
  });

  it("names each thing that was wanted once", () => {
    const actual = [word];
    const expectedPathsPerAlt = [[[Length]], [[Colon]], [[Length]]];
    const message = wantedMessages.buildNoViableAltMessage({
      expectedPathsPerAlt,
      actual,
      previous: word,
      ruleName: "sum",
    });
    assert.equal(message, "found `runing`, wanted a length or `:`");
  });

  it("has words for every kind of error that the parser knows", () => {
    const early = {
      expectedIterationPaths: [[Length]],
      actual: [word],
      previous: word,
      ruleName: "sum",
    };
    assert.equal(wantedMessages.buildEarlyExitMessage(early), "found `runing`, wanted a length");
    assert.equal(
      wantedMessages.buildNotAllInputParsedMessage({ firstRedundant: word, ruleName: "text" }),
      "found `runing`, wanted the end of the line; did you mean `running`?",
    );
  });

  it("calls a line's end by its name", () => {
    assert.equal(nameToken({ ...word, image: "", tokenType: LineEnd }), "the end of the line");
    assert.equal(nameToken({ ...word, image: "", tokenType: EOF }), "the end of the line");
    assert.equal(nameToken(undefined), "the end of the line");
  });

  it("cuts long quotes", () => {
    assert.equal(shorten("x".repeat(40)), "x".repeat(40));
    assert.equal(shorten("x".repeat(41)), `${"x".repeat(39)}…`);
  });

  it("joins words as people do", () => {
    assert.deepEqual([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(joinWords), [
      "",
      "a",
      "a or b",
      "a, b or c",
    ]);
  });
});
