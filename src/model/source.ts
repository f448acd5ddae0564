/** A place in a text: line and character from zero, characters in UTF-16 units (as editors count). */
export interface Position {
  readonly line: number;
  readonly character: number;
}

/** A stretch of a text; `end` is just past its last character. */
export interface SourceRange {
  readonly start: Position;
  readonly end: Position;
}

/** Where a fact of the plan was written. */
export interface Origin {
  /** The file's path as the host named it. */
  readonly file: string;
  /** The whole statement or block. */
  readonly range: SourceRange;
  /** What to underline: the statement's name or keyword. */
  readonly head: SourceRange;
}
