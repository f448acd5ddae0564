import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

/** Takes an `allow` away that silences nothing. */
export const dropAllow: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "allow/unused") return [];
  const statement = statementAtHead(state, diagnostic.range);
  if (statement?.kind !== "allow") return [];
  const { tree } = state;
  const { line } = tree.lines.position(statement.start);
  const start = tree.lines.offset({ line, character: 0 });
  const alone = tree.text.slice(start, statement.start).trim() === "";
  const next = tree.lines.offset({ line: line + 1, character: 0 });
  const rest = tree.text.slice(statement.end, next);
  // What stands beside it, a comment too, stays.
  const whole = alone && rest.trim() === "";
  const span = whole ? { start, end: next } : { start: statement.start, end: statement.end };
  return [
    {
      title: "Take this allow away",
      mends: diagnostic,
      preferred: true,
      edits: [{ range: tree.lines.range(span), text: "" }],
    },
  ];
};
