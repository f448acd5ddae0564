import { tidy } from "../language/index.js";
import type { DocumentState } from "./document-state.js";
import type { TextEdit } from "./edits.js";

/** What tidies a text, a stretch of changed lines at a time, so that cursors elsewhere stay put. */
export function formatEdits({ document, tree }: DocumentState): TextEdit[] {
  const before = linesOf(document.text);
  const after = linesOf(tidy(document.text));
  if (before.length !== after.length) {
    const changed = middle(before, after);
    return changed ? [edit(changed.from, changed.to, changed.text)] : [];
  }
  const edits: TextEdit[] = [];
  for (let i = 0; i < before.length; i++) {
    if (before[i] === after[i]) continue;
    const from = i;
    while (i + 1 < before.length && before[i + 1] !== after[i + 1]) i++;
    edits.push(edit(from, i + 1, after.slice(from, i + 1)));
  }
  return edits;

  function edit(from: number, to: number, text: readonly string[]): TextEdit {
    const start = tree.lines.offset({ line: from, character: 0 });
    const end = tree.lines.offset({ line: to, character: 0 });
    return { range: tree.lines.range({ start, end }), text: text.join("") };
  }
}

/** Lines with their ends. */
function linesOf(text: string): string[] {
  return text.match(/[^\r\n]*(?:\r\n|\n|\r)|[^\r\n]+$/g) ?? [];
}

/** The stretch of lines between those that stay at both ends. */
function middle(
  before: readonly string[],
  after: readonly string[],
): { from: number; to: number; text: readonly string[] } | null {
  let from = 0;
  while (from < before.length && before[from] === after[from] && from < after.length) from++;
  let end = 0;
  const most = Math.min(before.length, after.length) - from;
  while (end < most && before[before.length - 1 - end] === after[after.length - 1 - end]) end++;
  if (from === before.length && from === after.length) return null;
  return { from, to: before.length - end, text: after.slice(from, after.length - end) };
}
