import type { DocumentState } from "./document-state.js";
import { statementsOf } from "./walk-tree.js";

/** Lines that can be folded away; the first stays. */
export interface Fold {
  readonly startLine: number;
  readonly endLine: number;
  readonly kind: "block" | "comment";
}

/** A text with more folds than this is folded in part. */
const MOST_FOLDS = 5_000;

/** Blocks, without the line of their brace, and runs of lines that are comments alone. */
export function foldsOf({ tree, document }: DocumentState): Fold[] {
  const folds: Fold[] = [];
  for (const { statement } of statementsOf(tree.statements)) {
    if (!("body" in statement)) continue;
    const { start, end } = tree.lines.range(statement);
    const last = document.text[statement.end - 1] === "}" ? end.line - 1 : end.line;
    if (last > start.line) folds.push({ startLine: start.line, endLine: last, kind: "block" });
  }
  folds.push(...commentFolds(document.text));
  return folds.sort((a, b) => a.startLine - b.startLine).slice(0, MOST_FOLDS);
}

function commentFolds(text: string): Fold[] {
  const folds: Fold[] = [];
  let first: number | null = null;
  const lines = text.split(/\r\n|\n|\r/);
  for (let line = 0; line <= lines.length; line++) {
    if (/^\s*#/.test(lines[line] ?? "")) first ??= line;
    else {
      if (first !== null && line - 1 > first) {
        folds.push({ startLine: first, endLine: line - 1, kind: "comment" });
      }
      first = null;
    }
  }
  return folds;
}
