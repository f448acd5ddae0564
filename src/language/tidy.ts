import type { IToken, TokenType } from "chevrotain";
import { areBracesMatched, endOf } from "./lines.js";
import { tableLines } from "./line-table.js";
import { parse } from "./parse.js";
import { tokenise } from "./lexer.js";
import * as T from "./tokens.js";
import { STATEMENTS, WORD } from "./vocabulary.js";

/** How much further in a block's statements stand. */
const STEP = "  ";
/** Comments behind statements stand in this column where they have the room. */
const COMMENT_COLUMN = 42;
/** The least room between a statement and its comment. */
const GAP = 2;

/** One line of a text, in parts. */
interface TextLine {
  /** The whole line, without its end. */
  readonly whole: string;
  readonly end: string;
  readonly tokens: readonly IToken[];
  /** With its `#`; empty where there is none. */
  readonly comment: string;
  /** A line that can't be understood stays as it is. */
  readonly broken: boolean;
}

/** A line as it will stand. */
interface Tidied {
  readonly indent: string;
  readonly code: string;
  readonly comment: string;
  /** Set where the line stays as it is. */
  readonly kept: string | null;
  readonly end: string;
}

/**
 * A plan's text in the house style: two spaces a block, one space between words, comments in
 * columns, one blank line at most between statements. Meaning and comments stay as they are, lines
 * that can't be understood stay to the letter, and a tidy text stays itself.
 */
export function tidy(text: string): string {
  const { problems, lines: table } = parse(text);
  // A text that is too long to be read is too long to be tidied.
  if (problems.some(({ code }) => code === "syntax/too-long")) return text;
  const broken = new Set(
    problems
      // A lost brace is no fault of its line.
      .filter(({ code }) => code !== "syntax/unclosed")
      .map(({ start }) => table.lineOf(start)),
  );
  const tokens = tokenise(text);
  // Where braces don't match, indentation says what was meant: it stays.
  const matched = areBracesMatched(tokens);
  const lines = linesOf(text, tokens, broken);
  const tidied = withoutBlankRuns(indentLines(lines, matched));
  return alignComments(tidied).join("");
}

function linesOf(text: string, tokens: readonly IToken[], broken: ReadonlySet<number>): TextLine[] {
  const table = tableLines(text);
  const byLine = new Map<number, IToken[]>();
  for (const token of tokens) {
    if (token.tokenType === T.LineEnd) continue;
    const line = table.lineOf(token.startOffset);
    const own = byLine.get(line);
    if (own) own.push(token);
    else byLine.set(line, [token]);
  }
  return cut(text).map(({ whole, end, start }, i): TextLine => {
    const own = byLine.get(i) ?? [];
    const from = own.length > 0 ? endOf(own.at(-1)!) - start : 0;
    const hash = whole.indexOf("#", from);
    const comment = hash < 0 ? "" : whole.slice(hash).trimEnd();
    return { whole, end, tokens: own, comment, broken: broken.has(i) };
  });
}

function cut(text: string): { whole: string; end: string; start: number }[] {
  const lines: { whole: string; end: string; start: number }[] = [];
  let start = 0;
  for (const found of text.matchAll(/\r\n|\n|\r/g)) {
    lines.push({ whole: text.slice(start, found.index), end: found[0], start });
    start = found.index + found[0].length;
  }
  if (start < text.length) lines.push({ whole: text.slice(start), end: "", start });
  return lines;
}

function indentLines(lines: readonly TextLine[], matched: boolean): Tidied[] {
  let depth = 0;
  return lines.map((line): Tidied => {
    const { tokens, comment, whole, end, broken } = line;
    const closing = leadingCloses(tokens);
    const indent = matched ? STEP.repeat(Math.max(0, depth - closing)) : /^\s*/.exec(whole)![0];
    for (const { tokenType } of tokens) {
      if (tokenType === T.OpenBrace) depth++;
      else if (tokenType === T.CloseBrace) depth--;
    }
    const blank = tokens.length === 0 && comment === "";
    const code = broken ? "" : spaced(tokens);
    return { indent: blank ? "" : indent, code, comment, kept: broken ? whole : null, end };
  });
}

/** How many braces a line closes before anything else: it stands as far out as they do. */
function leadingCloses(tokens: readonly IToken[]): number {
  const first = tokens.findIndex(({ tokenType }) => tokenType !== T.CloseBrace);
  return first < 0 ? tokens.length : first;
}

/** Tokens with one space between them, but where none belongs. */
function spaced(tokens: readonly IToken[]): string {
  let code = "";
  for (const [i, token] of tokens.entries()) {
    const before = tokens[i - 1];
    if (before && wantsSpace(before, token, tokens.slice(0, i - 1))) code += " ";
    code += token.tokenType === T.Length ? token.image.replace(/[ \t]+/g, " ") : token.image;
  }
  return code;
}

/** Marks that stand right behind what they follow. */
const TIGHT: ReadonlySet<TokenType> = new Set([T.Comma, T.Colon, T.CloseParen, T.Percent]);

/** Whether a space stands between two tokens; `earlier` are those that the first one follows. */
function wantsSpace(before: IToken, token: IToken, earlier: readonly IToken[]): boolean {
  if (TIGHT.has(token.tokenType) || before.tokenType === T.OpenParen) return false;
  if (isSlashOfCode(before, token)) return false;
  return !isSign(before, earlier);
}

/** The slash of `cut/sliver` has no space round it; that of a division has. */
function isSlashOfCode(before: IToken, token: IToken): boolean {
  const tight = endOf(before) === token.startOffset;
  return tight && (before.tokenType === T.Slash || token.tokenType === T.Slash);
}

/** A `-` or `+` that nothing stands before which it could take from, so that it belongs to what follows. */
function isSign(token: IToken, earlier: readonly IToken[]): boolean {
  if (token.tokenType !== T.Minus && token.tokenType !== T.Plus) return false;
  const before = earlier.at(-1);
  if (!before) return true;
  const { tokenType, image } = before;
  if (T.isWord(before)) return BEFORE_LENGTH.has(image) || isStarter(earlier);
  return tokenType !== T.Length && tokenType !== T.CloseParen;
}

/** The words inside a line behind which a length stands. */
const BEFORE_LENGTH: ReadonlySet<string> = new Set(
  [
    WORD.x,
    WORD.measured,
    WORD.movement,
    WORD.joint,
    WORD.to,
    WORD.at,
    WORD.across,
    WORD.down,
    WORD.covers,
    WORD.under,
  ].map(({ LABEL }) => LABEL!.slice(1, -1)),
);

/** The words that begin statements. */
const STARTERS: ReadonlySet<string> = new Set(
  Object.values(STATEMENTS).flatMap((statements) => [...statements.keys()]),
);

/** Whether the last of a line's tokens begins a statement: elsewhere the same word may be a length's name. */
function isStarter(line: readonly IToken[]): boolean {
  const before = line.at(-2);
  return STARTERS.has(line.at(-1)!.image) && (!before || before.tokenType === T.OpenBrace);
}

/** Of blank lines in a row the first stays, and none at the beginning or the end. */
function withoutBlankRuns(lines: readonly Tidied[]): Tidied[] {
  const isBlank = ({ code, comment, kept }: Tidied): boolean =>
    code === "" && comment === "" && (kept === null || kept.trim() === "");
  const kept = lines.filter((line, i) => {
    const before = lines[i - 1];
    return !isBlank(line) || (before !== undefined && !isBlank(before));
  });
  while (kept.length > 0 && isBlank(kept.at(-1)!)) kept.pop();
  const last = kept.at(-1);
  if (last?.end === "") kept[kept.length - 1] = { ...last, end: lines[0]!.end || "\n" };
  return kept;
}

/** In each run of lines without a blank one, comments behind statements stand in one column. */
function alignComments(lines: readonly Tidied[]): string[] {
  const printed: string[] = [];
  let run: Tidied[] = [];
  const flush = (): void => {
    const behind = run.filter(({ code, comment, kept }) => kept === null && code && comment);
    const widths = behind.map(({ indent, code }) => indent.length + code.length + GAP);
    const column = Math.max(COMMENT_COLUMN, ...widths);
    printed.push(...run.map((line) => print(line, column)));
    run = [];
  };
  for (const line of lines) {
    run.push(line);
    if (line.code === "" && line.comment === "" && line.kept === null) flush();
  }
  flush();
  return printed;
}

function print({ indent, code, comment, kept, end }: Tidied, column: number): string {
  if (kept !== null) return kept + end;
  if (code === "" || comment === "") return indent + code + comment + end;
  return (indent + code).padEnd(column) + comment + end;
}
