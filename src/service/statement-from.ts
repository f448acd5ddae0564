import type { Syntax } from "../language/index.js";
import type { Origin } from "../model/index.js";
import type { DocumentState } from "./document-state.js";
import { statementsOf } from "./walk-tree.js";

/** The statement of a document that a fact of its plan was written in; null for another file's. */
export function statementFrom(state: DocumentState, origin: Origin): Syntax.Statement | null {
  if (origin.file !== state.document.file) return null;
  const { tree } = state;
  const start = tree.lines.offset(origin.range.start);
  const end = tree.lines.offset(origin.range.end);
  for (const { statement } of statementsOf(tree.statements)) {
    if (statement.start === start && statement.end === end) return statement;
  }
  return null;
}
