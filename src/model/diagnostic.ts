import type { SourceRange } from "./source.js";

export type Severity = "error" | "warning" | "information";

/** A further place that explains a diagnostic. */
export interface RelatedPlace {
  readonly file: string;
  readonly range: SourceRange;
  readonly message: string;
}

/** One thing to tell the person about a plan, at its place in the text. */
export interface Diagnostic {
  /** Stable, such as `cut/sliver` or `syntax/length`. */
  readonly code: string;
  readonly severity: Severity;
  /** In the plan's own units, with the figure found and the figure wanted. */
  readonly message: string;
  readonly file: string;
  readonly range: SourceRange;
  readonly wall?: string;
  /** Ids of the pieces concerned, such as `back/1/3`. */
  readonly pieces?: readonly string[];
  /** The published source of the rule, or "common practice". */
  readonly source?: string;
  readonly related?: readonly RelatedPlace[];
  /** The reason given by an `allow` that silences this finding. */
  readonly allowed?: string;
  /** The courses that are set and hold all of it, `courses 1 to 6`: it can't be mended any more, as the message says. */
  readonly set?: string;
}
