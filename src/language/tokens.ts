import type { IToken, TokenType } from "chevrotain";
import { createToken, Lexer } from "chevrotain";
import { LENGTH_LITERAL } from "../measure/index.js";

const SPACES =
  "\t\v\f \u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u2028\u2029\u202f\u205f\u3000\ufeff".split(
    "",
  );
const DIGITS = "0123456789.".split("");
// Latin with its accents, then other scripts; punctuation, arrows and ready-made fractions are no letters.
const LETTER = String.raw`A-Za-z\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u024f\u0370-\u1fff\u3040-\ud7ff`;
// Accents that follow their letter.
const COMBINING = "\u0300-\u036f";

export const Space = createToken({
  name: "Space",
  pattern: /[^\S\r\n]+|\ufeff/,
  group: Lexer.SKIPPED,
  start_chars_hint: SPACES,
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
  start_chars_hint: DIGITS,
  line_breaks: false,
});
export const Name = createToken({
  name: "Name",
  pattern: new RegExp(String.raw`[${LETTER}](?:[${LETTER}0-9_-]|[${COMBINING}])*`),
  label: "a name",
  line_breaks: false,
});
/** The `x` of `60x96`, which would otherwise begin the name `x96`. */
export const TightTimes = createToken({
  name: "TightTimes",
  pattern: /(?<=[\d"'])x(?=[\d.(])/,
  start_chars_hint: ["x"],
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

function mark(name: string, character: string): TokenType {
  return createToken({ name, pattern: character, label: `\`${character}\`` });
}

export const OpenBrace = mark("OpenBrace", "{");
export const CloseBrace = mark("CloseBrace", "}");
export const OpenParen = mark("OpenParen", "(");
export const CloseParen = mark("CloseParen", ")");
export const Comma = mark("Comma", ",");
export const Colon = mark("Colon", ":");
export const Equals = mark("Equals", "=");
export const Plus = mark("Plus", "+");
export const Minus = mark("Minus", "-");
export const Star = mark("Star", "*");
export const Slash = mark("Slash", "/");

/** What the lexer itself tells apart. Words with a meaning are Names until the layout knows their place. */
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
  Plus,
  Minus,
  Star,
  Slash,
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
