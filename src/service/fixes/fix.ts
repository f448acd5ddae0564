import type { Diagnostic } from "../../model/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";

/** A change of the document that mends something. */
export interface Fix {
  readonly title: string;
  /** What it mends; null where nothing is wrong. */
  readonly mends: Diagnostic | null;
  /** Whether it is what most people would want. */
  readonly preferred: boolean;
  readonly edits: readonly TextEdit[];
}

/** Finds mends of one diagnostic of a document. */
export type Fixer = (state: DocumentState, diagnostic: Diagnostic) => Fix[];
