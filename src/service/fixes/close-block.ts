import type { Fixer } from "./fix.js";
import { statementsOf } from "../walk-tree.js";

/** Closes a block whose brace is missing, behind the last statement that is in it. */
export const closeBlock: Fixer = ({ tree }, diagnostic) => {
  if (diagnostic.code !== "syntax/unclosed") return [];
  const start = tree.lines.offset(diagnostic.range.start);
  for (const { statement } of statementsOf(tree.statements)) {
    if (statement.start !== start || !("body" in statement)) continue;
    const last = statement.body.at(-1)?.end ?? tree.lines.offset(diagnostic.range.end);
    const { line } = tree.lines.position(last);
    const end = tree.lines.position(tree.lines.offset({ line, character: Infinity }));
    const heading = tree.lines.offset({ line: diagnostic.range.start.line, character: 0 });
    const indent = /^[ \t]*/.exec(tree.text.slice(heading))![0];
    const lineEnd = /\r\n|\n|\r/.exec(tree.text)?.[0] ?? "\n";
    const text = `${lineEnd}${indent}}`;
    return [
      {
        title: "Close this block",
        mends: diagnostic,
        preferred: true,
        edits: [{ range: { start: end, end }, text }],
      },
    ];
  }
  return [];
};
