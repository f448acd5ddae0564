import type { SourceRange } from "../model/index.js";

/** A stretch of a text and what takes its place. */
export interface TextEdit {
  readonly range: SourceRange;
  readonly text: string;
}

/** Edits of one file, which don't overlap. */
export interface FileEdits {
  readonly file: string;
  readonly edits: readonly TextEdit[];
}
