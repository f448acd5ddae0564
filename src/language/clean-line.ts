import type { IToken } from "chevrotain";
import { endOf } from "./lines.js";
import type { SyntaxProblem } from "./syntax-problem.js";
import * as T from "./tokens.js";
import { INNER_WORDS } from "./vocabulary.js";
import { nameToken } from "./wanted.js";

/** Parentheses deeper than this are no sum that anybody wrote, and each costs the reader's stack. */
const DEEPEST = 40;

/** What editors and web pages make of the characters that the language knows. */
const MEANT: ReadonlyMap<string, string> = new Map([
  ["“", '"'],
  ["”", '"'],
  ["″", '"'],
  ["‘", "'"],
  ["’", "'"],
  ["′", "'"],
  ["×", "x"],
  ["–", "-"],
  ["—", "-"],
  ["−", "-"],
  ["÷", "/"],
  ["⁄", "/"],
  ["½", "1/2"],
  ["¼", "1/4"],
  ["¾", "3/4"],
  ["⅛", "1/8"],
  ["⅜", "3/8"],
  ["⅝", "5/8"],
  ["⅞", "7/8"],
]);

/** A line's tokens with words told from names; null and a problem where it can't be parsed at all. */
export interface CleanLine {
  readonly tokens: readonly IToken[];
  readonly problem: SyntaxProblem | null;
}

/** Tells and leaves out what no line may hold, and gives the words inside the line their meaning. */
export function cleanLine(line: readonly IToken[]): CleanLine {
  let problem: SyntaxProblem | null = null;
  const tell = (code: SyntaxProblem["code"], start: number, end: number, message: string): void => {
    problem ??= { code, message, start, end };
  };
  const tokens: IToken[] = [];
  let depth = 0;
  for (let i = 0; i < line.length; i++) {
    const token = line[i]!;
    const { tokenType, startOffset } = token;
    if (tokenType === T.Stray) {
      if (line[i - 1]?.tokenType === T.Stray && endOf(line[i - 1]!) === startOffset) continue;
      const run = strayRun(line, i);
      tell("syntax/character", startOffset, startOffset + run.length, strayMessage(run));
      continue;
    }
    if (tokenType === T.OpenText) {
      tell("syntax/text", startOffset, endOf(token), 'the text is not closed: its `"` is missing');
    }
    if (tokenType === T.OpenParen && ++depth > DEEPEST) {
      const message = `found more than ${DEEPEST} parentheses in one another, wanted a sum in several \`let\``;
      tell("syntax/nesting", startOffset, endOf(token), message);
      return { tokens: [], problem };
    }
    if (tokenType === T.CloseParen) depth--;
    // The first word begins a statement: the layout knows which.
    tokens.push(tokens.length === 0 ? token : retypeWord(token));
  }
  return { tokens, problem };
}

function strayRun(line: readonly IToken[], from: number): string {
  let run = "";
  for (let i = from; i < line.length && line[i]!.tokenType === T.Stray; i++) {
    if (line[i]!.startOffset !== line[from]!.startOffset + run.length) break;
    run += line[i]!.image;
  }
  return run;
}

function strayMessage(run: string): string {
  const meant = MEANT.get(run);
  const hint = meant === undefined ? "which no statement has" : `wanted \`${meant}\``;
  return `found ${nameToken({ image: run, tokenType: T.Stray } as IToken)}, ${hint}`;
}

function retypeWord(token: IToken): IToken {
  if (token.tokenType === T.OpenText) return T.retype(token, T.Text);
  const type = token.tokenType === T.Name ? INNER_WORDS.get(token.image) : undefined;
  return type ? T.retype(token, type) : token;
}
