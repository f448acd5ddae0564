import type { IToken, TokenType } from "chevrotain";
import type { AmountKind } from "../measure/index.js";
import { cleanLine } from "./clean-line.js";
import { tableLines } from "./line-table.js";
import { areBracesMatched, cutLines, endOf, type Line } from "./lines.js";
import { tokenise } from "./lexer.js";
import { readingGrammar } from "./reader.js";
import * as T from "./tokens.js";
import { type BlockKind, INNER_WORDS, START, STATEMENTS } from "./vocabulary.js";

/** What may be named at a place. */
export type NameWanted =
  /** A name that is being given, so nothing can be offered. */
  "new" | "let" | "tile" | "trim" | "wall" | "opening" | "unit" | AmountKind | "code";

/** What may come next at a place of a text, broken or not. */
export interface Expected {
  /** The block that the place stands in. */
  readonly block: BlockKind;
  /** The offset at which the word at the place begins. */
  readonly from: number;
  /** The first word of the statement, or null where a statement may begin. */
  readonly statement: string | null;
  /** Words with a meaning that may stand here. */
  readonly words: readonly string[];
  readonly names: readonly NameWanted[];
  /** Whether a length may stand here. */
  readonly length: boolean;
  /** Whether the place is inside quotes, or quotes may begin here. */
  readonly text: "inside" | "may-begin" | null;
  /** Whether a unit may follow directly: the place is just behind a number. */
  readonly unit: boolean;
}

/** A block that is open at the place. */
interface Open {
  readonly kind: BlockKind;
  readonly indent: number;
}

/** What may stand at an offset of a text, by the grammar itself. null inside a comment. */
export function expectedAt(text: string, offset: number): Expected | null {
  const before = tokenise(text.slice(0, offset));
  if (isInComment(text, offset, before.at(-1))) return null;
  const table = tableLines(text);
  const lines = cutLines(before, table);
  const matched = areBracesMatched(tokenise(text));
  const last = lines.at(-1);
  const isCurrent = last?.ending === "line" && isOnLineOf(text, offset, last);
  const line = isCurrent ? last.tokens : [];
  const walked = isCurrent ? lines.slice(0, -1) : lines;
  const indent = indentAt(text, offset);
  const block = blockAfter(walked, matched, isOwnLine(text, offset, line) ? indent : null);
  return expectedInLine(block, line, offset);
}

function isOnLineOf(text: string, offset: number, line: Line): boolean {
  const end = endOf(line.tokens.at(-1)!);
  return !/[\r\n]/.test(text.slice(end, offset));
}

/** Comments are no tokens: one runs where a `#` stands behind the last token of the line. */
function isInComment(text: string, offset: number, last: IToken | undefined): boolean {
  const from = last ? endOf(last) : 0;
  const rest = text.slice(from, offset);
  return rest.slice(Math.max(rest.lastIndexOf("\n"), rest.lastIndexOf("\r")) + 1).includes("#");
}

function lineStart(text: string, offset: number): number {
  return Math.max(text.lastIndexOf("\n", offset - 1), text.lastIndexOf("\r", offset - 1)) + 1;
}

function indentAt(text: string, offset: number): number {
  const start = lineStart(text, offset);
  return /^[ \t]*/.exec(text.slice(start, offset))![0].length;
}

/** Whether nothing stands before the statement on its line. */
function isOwnLine(text: string, offset: number, line: readonly IToken[]): boolean {
  const from = line[0]?.startOffset ?? offset;
  return text.slice(lineStart(text, from), from).trim() === "";
}

/** The block that is open behind these lines; where braces don't match, indentation tells which are over. */
function blockAfter(lines: readonly Line[], matched: boolean, indent: number | null): BlockKind {
  const open: Open[] = [{ kind: "plan", indent: -1 }];
  const leave = (at: number | null): void => {
    while (!matched && at !== null && open.length > 1 && at <= open.at(-1)!.indent) open.pop();
  };
  for (const line of lines) {
    if (line.tokens.length > 0) leave(line.indent);
    if (line.ending === "open") {
      const { kind, indent: outer } = open.at(-1)!;
      const opens = STATEMENTS[kind].get(line.tokens[0]?.image ?? "")?.opens ?? kind;
      open.push({ kind: opens, indent: line.indent ?? outer });
    } else if (line.ending === "close" && open.length > 1) open.pop();
  }
  leave(indent);
  return open.at(-1)!.kind;
}

function expectedInLine(block: BlockKind, line: readonly IToken[], offset: number): Expected {
  const nothing = { block, from: offset, statement: null, words: [], names: [] } as const;
  const last = line.at(-1);
  if (last?.tokenType === T.OpenText) {
    const from = last.startOffset + 1;
    const statement = line.length > 1 ? line[0]!.image : null;
    return { ...nothing, from, statement, length: false, text: "inside", unit: false };
  }
  const isBehind = last !== undefined && endOf(last) === offset;
  const isWord = isBehind && T.isWord(last);
  const typed = isWord ? line.slice(0, -1) : line;
  const from = isWord ? last.startOffset : offset;
  const unit = isBehind && last.tokenType === T.Length;
  const entry = block === "rules" ? afterComma(typed) : typed;
  if (entry.length === 0) {
    const words = [...STATEMENTS[block].keys()];
    return { ...nothing, from, words, length: false, text: null, unit };
  }
  return { ...nothing, from, unit, ...askGrammar(block, entry) };
}

/** The entry of `rules { ... }` that is being typed. */
function afterComma(tokens: readonly IToken[]): readonly IToken[] {
  return tokens.slice(tokens.map(({ tokenType }) => tokenType).lastIndexOf(T.Comma) + 1);
}

type Asked = Pick<Expected, "statement" | "words" | "names" | "length" | "text">;

function askGrammar(block: BlockKind, line: readonly IToken[]): Asked {
  const first = line[0]!;
  const statement = first.image;
  const starter = block === "rules" ? START.limit : STATEMENTS[block].get(statement);
  const rule = starter && Object.entries(START).find(([, start]) => start === starter)?.[0];
  const { tokens } = cleanLine(line);
  if (!starter || !rule || tokens.length === 0) {
    return { statement, words: [], names: [], length: false, text: null };
  }
  const typed = [T.retype(tokens[0]!, starter.token), ...tokens.slice(1)];
  const next = readingGrammar().computeContentAssist(rule, typed);
  const types = next.map(({ nextTokenType }) => nextTokenType);
  const names = next
    .filter(({ nextTokenType }) => nextTokenType === T.Name)
    .map(({ ruleStack }) => nameWanted(rule, ruleStack.at(-1)!));
  return {
    statement,
    words: types.flatMap(wordOf),
    names: [...new Set(names)],
    length: next.some(
      ({ nextTokenType, ruleStack }) => nextTokenType === T.Length && ruleStack.at(-1) !== "number",
    ),
    text: types.includes(T.Text) ? "may-begin" : null,
  };
}

const WORD_OF: ReadonlyMap<TokenType, string> = new Map(
  [...INNER_WORDS].map(([word, type]) => [type, word]),
);

function wordOf(type: TokenType): string[] {
  const word = WORD_OF.get(type);
  return word === undefined ? [] : [word];
}

/** Which kind of name a grammar rule asks for. */
function nameWanted(statement: string, rule: string): NameWanted {
  switch (rule) {
    case "term":
      return "let";
    case "corner":
    case "outside":
    case "carried":
      return "wall";
    case "endTrim":
    case "frame":
      return "trim";
    case "centred":
    case "fullCourse":
    case "centreOn":
    case "wholeCourses":
      return "opening";
    case "units":
      return "unit";
    case "mass":
    case "volume":
    case "area":
      return rule;
    case "allow":
      return "code";
    case "lining":
    case "layOver":
    case "layUnder":
    case "courseRun":
      return "tile";
    case "heading":
      return statement === "lay" ? "tile" : "new";
    default:
      return "new";
  }
}
