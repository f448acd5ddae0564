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
  readonly heading: Span;
  readonly indent: number;
  /** The column of its first line; null before there is one. */
  bodyIndent: number | null;
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
    { kind: "plan", role: "bare", heading: { start: 0, end: 0 }, indent: -1, bodyIndent: null },
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
      for (const block of this.blocks) block.bodyIndent ??= line.indent;
      this.placeStatement(line, next);
    } else if (line.ending === "open") {
      this.tell("syntax/brace", line.brace!, "found `{` without a heading such as `wall back`");
      // One that has no partner is best forgotten.
      if (this.matched)
        this.enter(this.block.kind, this.isForeign(next) ? "skipped" : "bare", line);
    }
    if (line.ending === "close") this.close(line, next);
  }

  /** Whether a line begins a statement of other blocks: then the block has lost its heading, and one message is enough. */
  private isForeign(line: Line | undefined): boolean {
    const word = line?.tokens[0]?.image ?? "";
    const { kind } = this.block;
    return !STATEMENTS[kind].has(word) && Object.values(STATEMENTS).some((each) => each.has(word));
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
      if (line.ending === "open") this.enterNeedless(line, next);
      return;
    }
    const starter = tokens[0] && this.findStarter(tokens[0]);
    if (starter) this.handOn(starter, tokens, line, next);
    else if (opens) this.enter(this.block.kind, "skipped", line);
    else if (this.isOrphan(line)) this.enterOrphans(line);
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

  private handOn(
    starter: Starter,
    tokens: readonly IToken[],
    line: Line,
    next: Line | undefined,
  ): void {
    const opens = line.ending === "open" || this.isOpenedUnsaid(line, next);
    if (starter.opens === null) {
      this.emitLine(starter.token, tokens);
      if (line.ending === "open") this.enterNeedless(line, next);
      return;
    }
    this.emit(starter.token, line.ending === "open" ? [...tokens, line.brace!] : tokens);
    // Without its brace the heading ends in a LineEnd, which the grammar tells.
    if (line.ending !== "open") this.emitEnd();
    if (opens) this.enter(starter.opens, "plain", line);
    else this.emitClose();
  }

  private enterNeedless(line: Line, next: Line | undefined): void {
    this.tell("syntax/brace", line.brace!, "found `{` after a statement that has no block");
    // Without a partner, and with nothing that stands further in, it is best forgotten.
    if (this.matched || isDeeper(next, line.indent)) this.enter(this.block.kind, "skipped", line);
  }

  private emit(first: TokenType, tokens: readonly IToken[]): void {
    tokens.forEach((token, i) => this.tokens.push(i === 0 ? T.retype(token, first) : token));
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
    this.blocks.push({ kind, role, heading, indent, bodyIndent: null });
  }

  /** Lines that stand too far in are a block whose heading is lost: one message is enough for them all. */
  private enterOrphans(line: Line): void {
    const heading = { start: line.tokens[0]!.startOffset, end: endOf(line.tokens.at(-1)!) };
    const { kind, bodyIndent } = this.block;
    const indent = bodyIndent!;
    this.blocks.push({ kind, role: "skipped", heading, indent, bodyIndent: line.indent });
  }

  private close(line: Line, next: Line | undefined): void {
    const brace = line.brace!;
    if (this.blocks.length === 1 || this.isTooEarly(line, next)) {
      this.tell("syntax/brace", brace, "found `}` without a `{` that it could close");
      return;
    }
    if (this.blocks.pop()!.role === "plain") this.emitClose(brace);
  }

  /** A `}` out of its place, while the next line is still inside the block. */
  private isTooEarly(line: Line, next: Line | undefined): boolean {
    const { indent } = this.block;
    if (this.matched || !isDeeper(next, indent)) return false;
    const isInPlace = line.tokens.length === 0 && line.indent !== null && line.indent <= indent;
    return !isInPlace;
  }

  private leaveUnclosed(): void {
    const { role, heading } = this.blocks.pop()!;
    // Of the others, the heading has been told.
    if (role !== "plain") return;
    this.emitClose();
    const message = "this block is not closed: its `}` is missing";
    this.problems.push({ code: "syntax/unclosed", message, ...heading });
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
    if (block.bodyIndent !== null && block.bodyIndent > block.indent) return true;
    const belongs = STATEMENTS[block.kind].has(first.image) || block.kind === "rules";
    const fitsOutside = this.blocks.some(({ kind }) => STATEMENTS[kind].has(first.image));
    return fitsOutside && (!belongs || block.role === "skipped");
  }

  /** Whether a line without `{` still heads a block: braces don't match, and what follows is indented. */
  private isOpenedUnsaid(line: Line, next: Line | undefined): boolean {
    if (this.matched || line.ending !== "line" || line.indent === null) return false;
    if (!next || next.tokens.length === 0 || !isDeeper(next, line.indent)) return false;
    const starter = STATEMENTS[this.block.kind].get(line.tokens[0]!.image);
    return starter?.opens !== null;
  }

  private isOrphan(line: Line): boolean {
    if (this.matched || line.indent === null) return false;
    return line.indent > (this.block.bodyIndent ?? line.indent);
  }

  private tell(code: SyntaxProblem["code"], token: IToken, message: string): void {
    this.problems.push({ code, message, start: token.startOffset, end: endOf(token) });
  }
}

function isDeeper(line: Line | undefined, indent: number | null): boolean {
  const deeper = line?.indent ?? null;
  return deeper !== null && indent !== null && deeper > indent;
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
