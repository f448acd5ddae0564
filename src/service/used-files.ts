import { type Syntax, usedPath } from "../language/index.js";
import type { DocumentState } from "./document-state.js";

/** A `use` statement and the file that it names. */
export interface Use {
  readonly statement: Syntax.UseStatement;
  /** null when the path leaves the workspace. */
  readonly file: string | null;
}

/** The `use` statements of a document, in the order of its text. */
export function usesOf({ tree, document, root }: DocumentState): Use[] {
  return tree.statements.flatMap((statement) =>
    statement.kind === "use"
      ? [{ statement, file: usedPath({ root }, document.file, statement.path.text) }]
      : [],
  );
}
