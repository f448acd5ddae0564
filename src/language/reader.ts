import type { IToken } from "chevrotain";
import { Lexer } from "chevrotain";
import { PlanGrammar } from "./grammar.js";
import { LEXED } from "./tokens.js";

let lexer: Lexer | undefined;
let grammar: PlanGrammar | undefined;

/** The tokens of a text; spaces and comments are left out. */
export function tokenise(text: string): IToken[] {
  return readingLexer().tokenize(text).tokens;
}

/** The lexer, made when it is first needed: it costs as much as reading a few plans. */
function readingLexer(): Lexer {
  lexer ??= new Lexer([...LEXED], { positionTracking: "onlyOffset", skipValidations: true });
  return lexer;
}

/** The grammar, made when it is first needed. */
export function readingGrammar(): PlanGrammar {
  grammar ??= new PlanGrammar({ skipValidations: true });
  return grammar;
}
