import type { Span } from "../../language/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";

/** Takes a statement away with its line; what stands beside it, a comment too, stays. */
export function dropStatement({ tree }: DocumentState, statement: Span): TextEdit {
  const { line } = tree.lines.position(statement.start);
  const start = tree.lines.offset({ line, character: 0 });
  const alone = tree.text.slice(start, statement.start).trim() === "";
  const next = tree.lines.offset({ line: line + 1, character: 0 });
  const rest = tree.text.slice(statement.end, next);
  const whole = alone && rest.trim() === "";
  const span = whole ? { start, end: next } : { start: statement.start, end: statement.end };
  return { range: tree.lines.range(span), text: "" };
}
