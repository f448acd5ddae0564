import assert from "node:assert/strict";
import {
  createToken,
  CstParser,
  type ILookaheadStrategy,
  Lexer,
  LLkLookaheadStrategy,
} from "chevrotain";
import { LateLookahead } from "../../src/language/late-lookahead.js";

const A = createToken({ name: "A", pattern: "a" });
const B = createToken({ name: "B", pattern: "b" });
const C = createToken({ name: "C", pattern: "c" });
const LEXER = new Lexer([A, B, C]);

/** Any number of `a`, with a `b` or a `c` after each, and perhaps a `c` at the end. */
class Letters extends CstParser {
  constructor(lookaheadStrategy: ILookaheadStrategy) {
    super([A, B, C], { maxLookahead: 1, lookaheadStrategy });
    this.performSelfAnalysis();
  }

  readonly letters = this.RULE("letters", () => {
    this.MANY(() => {
      this.CONSUME(A);
      this.OR([{ ALT: () => this.CONSUME(B) }, { ALT: () => this.CONSUME(C) }]);
    });
    this.OPTION(() => this.CONSUME2(C));
  });
}

function read(grammar: Letters, text: string) {
  grammar.input = LEXER.tokenize(text).tokens;
  const cst = grammar.letters();
  return { cst, errors: grammar.errors.map(({ message }) => message) };
}

describe("lookahead that is worked out late", () => {
  it("chooses as the one that is worked out at once, also where the text is wrong", () => {
    const late = new Letters(new LateLookahead({ maxLookahead: 1 }));
    const early = new Letters(new LLkLookaheadStrategy({ maxLookahead: 1 }));
    for (const text of ["", "ab", "acab", "abc", "aacb", "b", "abcc", "abac"]) {
      assert.deepEqual(read(late, text), read(early, text), text);
    }
  });
});
