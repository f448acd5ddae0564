import type { Span } from "../language/index.js";
import type { DocumentState } from "./document-state.js";
import type { TextEdit } from "./edits.js";

/** How much further in a block's statements stand. */
const STEP = "  ";

/** Adds statements at the end of a block, each on a line of its own; null for a block that isn't closed. */
export function insertInBlock(
  { tree, document: { text } }: DocumentState,
  block: Span,
  statements: readonly string[],
): TextEdit | null {
  const brace = block.end - 1;
  if (text[brace] !== "}") return null;
  const lineEnd = /\r\n|\n|\r/.exec(text)?.[0] ?? "\n";
  const indent = indentOf(text, block.start);
  const written = statements.map((statement) => `${indent}${STEP}${statement}${lineEnd}`).join("");
  const braceLine = lineStart(text, brace);
  const before = text.slice(braceLine, brace);
  if (before.trim() === "") {
    const at = tree.lines.position(braceLine);
    return { range: { start: at, end: at }, text: written };
  }
  // The brace stands behind a statement: it moves to a line of its own.
  const behind = braceLine + before.trimEnd().length;
  const range = tree.lines.range({ start: behind, end: brace });
  return { range, text: `${lineEnd}${written}${indent}` };
}

function lineStart(text: string, offset: number): number {
  return Math.max(text.lastIndexOf("\n", offset - 1), text.lastIndexOf("\r", offset - 1)) + 1;
}

/** The spaces before the statement's line. */
function indentOf(text: string, offset: number): string {
  return /^[ \t]*/.exec(text.slice(lineStart(text, offset), offset))![0];
}
