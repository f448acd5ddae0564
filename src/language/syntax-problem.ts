import type { Span } from "./line-table.js";

/** Something wrong with the text itself, before its meaning is asked for. */
export interface SyntaxProblem extends Span {
  readonly code: SyntaxCode;
  readonly message: string;
}

export type SyntaxCode =
  | "syntax/brace"
  | "syntax/character"
  | "syntax/length"
  | "syntax/nesting"
  | "syntax/number"
  | "syntax/statement"
  | "syntax/text"
  | "syntax/too-long"
  | "syntax/unclosed"
  | "syntax/unexpected";
