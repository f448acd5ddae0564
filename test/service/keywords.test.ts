import assert from "node:assert/strict";
import { INNER_WORDS, STATEMENTS } from "../../src/language/vocabulary.js";
import { keywordHelp } from "../../src/service/keywords.js";

/** The kinds of statement in which a word may have a meaning of its own. */
const KINDS = [
  "units",
  "edge",
  "opening",
  "hole",
  "frame",
  "lay",
  "across",
  "up",
  "joint",
  "limit",
  "price",
  "bag",
];

describe("the help for words", () => {
  it("has a line for each word that begins a statement", () => {
    for (const [block, words] of Object.entries(STATEMENTS)) {
      for (const word of words.keys()) {
        const help = keywordHelp(word, block);
        assert.ok(help && !help.includes("\n"), `${block}: ${word}`);
      }
    }
  });

  it("has a line for each word inside a statement", () => {
    for (const word of INNER_WORDS.keys()) {
      assert.ok(
        KINDS.some((kind) => keywordHelp(word, kind) !== null),
        word,
      );
    }
  });

  it("goes by the statement where a word has more than one meaning", () => {
    assert.notEqual(keywordHelp("joint", "edge"), keywordHelp("joint", "lay"));
    assert.notEqual(keywordHelp("wall", "edge"), keywordHelp("wall", "plan"));
    assert.match(keywordHelp("across", "hole")!, /diameter/);
    assert.match(keywordHelp("under", "up")!, /opening/);
  });

  it("is none for other words, whatever every object has", () => {
    for (const word of ["nothing", "constructor", "toString", ""]) {
      assert.equal(keywordHelp(word, "lay"), null, word);
    }
  });

  it("tells a bond that is wished for from how a lay is bonded", () => {
    for (const place of ["prefer", "wish"]) {
      assert.match(keywordHelp("bond", place)!, /^At every corner the bond is wrapped/);
    }
    assert.match(keywordHelp("bond", "lay")!, /^How courses stand/);
    assert.match(keywordHelp("on", "wish")!, /^Past the corner; or the opening/);
  });
});
