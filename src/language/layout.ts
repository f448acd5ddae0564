import type { IToken, TokenType } from "chevrotain";
import { createTokenInstance } from "chevrotain";
import type { LineTable, Span } from "./line-table.js";
import type { Line } from "./lines.js";
import { areBracesMatched, cutLines, endOf } from "./lines.js";
import { cleanLine } from "./clean-line.js";
import type { SyntaxProblem } from "./syntax-problem.js";
import * as T from "./tokens.js";
import { tellStatement } from "./tell-statement.js";
import type { BlockKind, Starter } from "./vocabulary.js";
import { START, STATEMENTS } from "./vocabulary.js";

/** Tokens in the shape that the grammar needs, and what had to be put right for it. */
export interface LaidOut {
  readonly tokens: IToken[];
  readonly problems: readonly SyntaxProblem[];
}

/** A block that is open while lines are walked. */
interface OpenBlock {
  readonly kind: BlockKind;
  /** `skipped`: its heading could not be read, nor can what is in it; `bare`: braces that belong to no heading. */
  readonly role: "plain" | "skipped" | "bare";
  readonly heading: Span | null;
  readonly indent: number;
  /** Whether its first line stands further in than its heading; null before there is one. */
  indented: boolean | null;
}

/**
 * Gives each line its place: which block it stands in and which statement it begins. Hands on only lines
 * that begin with a statement of their block, each ended by a LineEnd, in blocks that are all closed.
 * Where braces don't match, indentation decides what was meant, so that a lost brace costs no
 * other line.
 */
export function layOut(tokens: readonly IToken[], table: LineTable): LaidOut {
  const layout = new Layout(cutLines(tokens, table), areBracesMatched(tokens));
  layout.run();
  return layout;
}

class Layout implements LaidOut {
  readonly tokens: IToken[] = [];
  readonly problems: SyntaxProblem[] = [];
  private readonly blocks: OpenBlock[] = [
    { kind: "plan", role: "bare", heading: null, indent: -1, indented: true },
  ];

  constructor(
    private readonly lines: readonly Line[],
    private readonly matched: boolean,
  ) {}

  run(): void {
    this.lines.forEach((line, i) => this.place(line, this.lines[i + 1]));
    while (this.blocks.length > 1) this.leaveUnclosed();
  }

  private get block(): OpenBlock {
    return this.blocks.at(-1)!;
  }

  private place(line: Line, next: Line | undefined): void {
    if (!this.matched) this.closeByIndent(line);
    if (line.tokens.length > 0) {
      this.block.indented ??= line.indent !== null && line.indent > this.block.indent;
      this.placeStatement(line, next);
    } else if (line.ending === "open") {
      this.tell("syntax/brace", line.brace!, "found `{` without a heading such as `wall back`");
      this.enter(this.block.kind, "bare", line);
    }
    if (line.ending === "close") this.close(line.brace!);
  }

  private placeStatement(line: Line, next: Line | undefined): void {
    const opens = line.ending === "open" || this.isOpenedUnsaid(line, next);
    if (this.block.role === "skipped") {
      if (opens) this.enter(this.block.kind, "skipped", line);
      return;
    }
    const { tokens, problem } = cleanLine(line.tokens);
    if (problem) this.problems.push(problem);
    if (this.block.kind === "rules") {
      for (const entry of splitAtCommas(tokens)) this.placeEntry(entry);
      if (opens) this.enter("rules", "skipped", line);
      return;
    }
    const starter = tokens[0] && this.findStarter(tokens[0]);
    if (starter) this.handOn(starter, tokens, line, opens);
    else if (opens) this.enter(this.block.kind, "skipped", line);
  }

  private findStarter(first: IToken): Starter | undefined {
    const known = STATEMENTS[this.block.kind].get(first.image);
    if (known && first.tokenType === T.Name) return known;
    const { problem, meant } = tellStatement(first, this.block.kind);
    this.problems.push(problem);
    return meant;
  }

  private placeEntry(tokens: readonly IToken[]): void {
    const first = tokens[0]!;
    if (T.isWord(first)) this.emitLine(START.limit.token, tokens);
    else this.problems.push(tellStatement(first, "rules").problem);
  }

  private handOn(starter: Starter, tokens: readonly IToken[], line: Line, opens: boolean): void {
    const brace = line.ending === "open" ? [line.brace!] : [];
    if (starter.opens === null) {
      this.emitLine(starter.token, [...tokens, ...brace]);
      if (opens) this.enter(this.block.kind, "skipped", line);
      return;
    }
    this.emit(starter.token, [...tokens, ...brace]);
    // Without its brace the heading ends in a LineEnd, which the grammar tells.
    if (line.ending !== "open") this.emitEnd();
    if (opens) {
      this.enter(starter.opens, "plain", line);
      return;
    }
    this.emitClose();
  }

  private emit(first: TokenType, [head, ...rest]: readonly IToken[]): void {
    this.tokens.push(T.retype(head!, first), ...rest);
  }

  private emitLine(first: TokenType, tokens: readonly IToken[]): void {
    this.emit(first, tokens);
    this.emitEnd();
  }

  /** A line end without width, just behind the last token. */
  private emitEnd(): void {
    this.tokens.push(emptyToken(T.LineEnd, this.tokens.at(-1)!));
  }

  private emitClose(brace: IToken = emptyToken(T.CloseBrace, this.tokens.at(-1)!)): void {
    this.tokens.push(brace);
    this.emitEnd();
  }

  private enter(kind: BlockKind, role: OpenBlock["role"], line: Line): void {
    const first = line.tokens[0] ?? line.brace!;
    const last = line.tokens.at(-1) ?? line.brace!;
    const heading = { start: first.startOffset, end: endOf(last) };
    const indent = line.indent ?? this.block.indent;
    this.blocks.push({ kind, role, heading, indent, indented: null });
  }

  private close(brace: IToken): void {
    if (this.blocks.length === 1) {
      this.tell("syntax/brace", brace, "found `}` without a `{` that it could close");
      return;
    }
    if (this.blocks.pop()!.role === "plain") this.emitClose(brace);
  }

  private leaveUnclosed(): void {
    const { role, heading } = this.blocks.pop()!;
    if (role === "plain") this.emitClose();
    this.problems.push({
      code: "syntax/unclosed",
      message: "this block is not closed: its `}` is missing",
      ...heading!,
    });
  }

  /** Leaves the blocks that this line shows to be over although their braces are missing. */
  private closeByIndent(line: Line): void {
    while (this.blocks.length > 1 && line.indent !== null && this.isOver(line, line.indent)) {
      this.leaveUnclosed();
    }
  }

  private isOver(line: Line, indent: number): boolean {
    const { block } = this;
    const first = line.tokens[0];
    if (!first) {
      const owner = this.blocks.at(-2)!;
      return line.ending === "close" && indent < block.indent && owner.indent >= 0;
    }
    if (indent > block.indent) return false;
    if (block.indented === true) return true;
    const belongs = STATEMENTS[block.kind].has(first.image) || block.kind === "rules";
    const fitsOutside = this.blocks.some(({ kind }) => STATEMENTS[kind].has(first.image));
    return fitsOutside && (!belongs || block.role === "skipped");
  }

  /** Whether a line without `{` still heads a block: braces don't match, and what follows is indented. */
  private isOpenedUnsaid(line: Line, next: Line | undefined): boolean {
    if (this.matched || line.ending !== "line" || line.indent === null) return false;
    const nextIndent = next && next.tokens.length > 0 ? next.indent : null;
    if (nextIndent === null || nextIndent <= line.indent) return false;
    const starter = STATEMENTS[this.block.kind].get(line.tokens[0]!.image);
    return starter?.opens !== null;
  }

  private tell(code: SyntaxProblem["code"], token: IToken, message: string): void {
    this.problems.push({ code, message, start: token.startOffset, end: endOf(token) });
  }
}

/** The entries of a line in `rules { ... }`. */
function splitAtCommas(tokens: readonly IToken[]): IToken[][] {
  const entries: IToken[][] = [[]];
  for (const token of tokens) {
    if (token.tokenType === T.Comma) entries.push([]);
    else entries.at(-1)!.push(token);
  }
  return entries.filter((entry) => entry.length > 0);
}

function emptyToken(type: TokenType, after: IToken): IToken {
  const at = endOf(after);
  return createTokenInstance(type, "", at, at - 1, NaN, NaN, NaN, NaN);
}
