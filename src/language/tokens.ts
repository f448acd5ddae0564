import type { IToken, TokenType } from "chevrotain";
import { createToken, Lexer } from "chevrotain";
import { LENGTH_LITERAL } from "../measure/index.js";

/** Runs of characters, each by its first and last. */
type Runs = readonly string[];

/** Latin with its accents, then other scripts; punctuation, arrows and ready-made fractions are no letters. */
const LETTERS: Runs = ["AZ", "az", "ÀÖ", "Øö", "øɏ", "\u0370\u1fff", "\u3040\ud7ff"];
/** Accents that follow their letter. */
const COMBINING: Runs = ["\u0300\u036f"];
/** All that separates words, and the mark that some editors put before a text; line ends are not among them. */
const SPACES: Runs = [
  "\t\t",
  "\v\f",
  "  ",
  "\u00a0\u00a0",
  "\u1680\u1680",
  "\u2000\u200a",
  "\u2028\u2029",
  "\u202f\u202f",
  "\u205f\u205f",
  "\u3000\u3000",
  "\ufeff\ufeff",
];

function oneOf(runs: Runs): string {
  return runs.map((run) => `${run[0]!}-${run[1]!}`).join("");
}

export const Space = createToken({
  name: "Space",
  pattern: new RegExp(`[${oneOf(SPACES)}]+`),
  group: Lexer.SKIPPED,
  line_breaks: false,
});
export const Comment = createToken({
  name: "Comment",
  pattern: /#[^\r\n]*/,
  group: Lexer.SKIPPED,
  line_breaks: false,
});
export const LineEnd = createToken({
  name: "LineEnd",
  pattern: /\r\n|\n|\r/,
  label: "the end of the line",
  line_breaks: true,
});
export const Length = createToken({
  name: "Length",
  pattern: LENGTH_LITERAL,
  label: "a length",
  line_breaks: false,
});
export const Name = createToken({
  name: "Name",
  pattern: new RegExp(`[${oneOf(LETTERS)}](?:[${oneOf(LETTERS)}0-9_-]|[${oneOf(COMBINING)}])*`),
  label: "a name",
  line_breaks: false,
});
/** The `x` of `60x96`, which would otherwise begin the name `x96`. */
export const TightTimes = createToken({
  name: "TightTimes",
  pattern: /(?<=[\d"'])x(?=[\d.(])/,
  label: "`x`",
  line_breaks: false,
});
export const Text = createToken({
  name: "Text",
  pattern: /"[^"\r\n]*"/,
  label: "a text in quotes",
  line_breaks: false,
});
export const OpenText = createToken({
  name: "OpenText",
  pattern: /"[^"\r\n]*/,
  line_breaks: false,
});
/** Anything else, so that the lexer never fails; the layout tells it and leaves it out. */
export const Stray = createToken({
  name: "Stray",
  pattern: /[^]/,
  line_breaks: true,
});

function mark(name: string, character: string, categories: TokenType[] = []): TokenType {
  return createToken({ name, pattern: character, label: `\`${character}\``, categories });
}

/** What may stand between two lengths, and before one. */
export const Operator = createToken({ name: "Operator", pattern: Lexer.NA, label: "an operator" });
export const Sign = createToken({ name: "Sign", pattern: Lexer.NA, label: "a sign" });

export const OpenBrace = mark("OpenBrace", "{");
export const CloseBrace = mark("CloseBrace", "}");
export const OpenParen = mark("OpenParen", "(");
export const CloseParen = mark("CloseParen", ")");
export const Comma = mark("Comma", ",");
export const Colon = mark("Colon", ":");
export const Equals = mark("Equals", "=");
/** Elsewhere than behind a number a `%` is stray. */
export const Percent = createToken({
  name: "Percent",
  pattern: /(?<=\d[ \t]?)%/,
  label: "`%`",
  line_breaks: false,
});
export const Plus = mark("Plus", "+", [Operator, Sign]);
export const Minus = mark("Minus", "-", [Operator, Sign]);
export const Star = mark("Star", "*", [Operator]);
export const Slash = mark("Slash", "/", [Operator]);

/** What the lexer itself tells apart; the first that fits is taken. Words with a meaning are Names until the layout knows their place. */
export const LEXED: readonly TokenType[] = [
  Space,
  LineEnd,
  TightTimes,
  Name,
  Length,
  OpenBrace,
  CloseBrace,
  Text,
  OpenText,
  Comment,
  OpenParen,
  CloseParen,
  Comma,
  Colon,
  Equals,
  Percent,
  Plus,
  Minus,
  Star,
  Slash,
  Operator,
  Sign,
  Stray,
];

/** Whether a token may stand where a name is wanted. */
export function isWord({ tokenType }: IToken): boolean {
  return tokenType === Name || (tokenType.CATEGORIES?.includes(Name) ?? false);
}

/** The same stretch of text, understood as another type of token. */
export function retype(token: IToken, tokenType: TokenType): IToken {
  return { ...token, tokenType, tokenTypeIdx: tokenType.tokenTypeIdx! };
}
