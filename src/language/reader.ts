import type { CstNode, IRecognitionException, IToken } from "chevrotain";
import { firstTokens } from "./first-tokens.js";
import { PlanGrammar } from "./grammar.js";
import { PreparedGrammar } from "./prepared-grammar.js";

let plain: PreparedGrammar | undefined;
let recovering: PlanGrammar | undefined;

/** What a text's tokens are, and what about them wasn't understood. */
export interface Reading {
  readonly cst: CstNode;
  readonly errors: readonly IRecognitionException[];
}

/** Reads the tokens of a text. Only one with an error is read by the grammar that goes on after it. */
export function readTokens(tokens: readonly IToken[]): Reading {
  plain ??= new PreparedGrammar(firstTokens());
  const reading = readWith(plain, tokens);
  return reading.errors.length === 0 ? reading : readWith(readingGrammar(), tokens);
}

function readWith(grammar: PlanGrammar, tokens: readonly IToken[]): Reading {
  grammar.input = [...tokens];
  const cst = grammar.text();
  return { cst, errors: grammar.errors };
}

/** The grammar that goes on after an error, made when it is first needed. */
export function readingGrammar(): PlanGrammar {
  recovering ??= new PlanGrammar({ skipValidations: true, recovers: true });
  return recovering;
}
