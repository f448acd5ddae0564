import type { Syntax } from "../../language/index.js";
import type { SourceRange } from "../../model/index.js";
import type { DocumentState } from "../document-state.js";
import { statementsOf } from "../walk-tree.js";

/** The statement whose name or keyword a diagnostic underlines. */
export function statementAtHead(
  { tree }: DocumentState,
  head: SourceRange,
): Syntax.Statement | null {
  const start = tree.lines.offset(head.start);
  const end = tree.lines.offset(head.end);
  for (const { statement } of statementsOf(tree.statements)) {
    if (statement.head.start === start && statement.head.end === end) return statement;
  }
  return null;
}
