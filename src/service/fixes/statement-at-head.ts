import type { Syntax } from "../../language/index.js";
import type { Origin, SourceRange } from "../../model/index.js";
import type { DocumentState } from "../document-state.js";
import { statementsOf } from "../walk-tree.js";

/** Whether a diagnostic's range underlines what was written there. */
export function isAtHead({ head }: Origin, range: SourceRange): boolean {
  const [{ start, end }, other] = [head, range];
  return (
    start.line === other.start.line &&
    start.character === other.start.character &&
    end.line === other.end.line &&
    end.character === other.end.character
  );
}

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
