import type { Diagnostic, Plan } from "../model/index.js";

/** Where a text stands, and how the host reads the files that it uses. */
export interface Source {
  /** The text's own path, with forward slashes. */
  readonly file: string;
  /** The folder that `use` may not leave. */
  readonly root: string;
  /** The text of a file, or null when there is none; paths as above. */
  readonly read: (path: string) => string | null;
}

/** A text as far as it could be understood; what could not is in the diagnostics. */
export interface Resolved {
  readonly plan: Plan;
  readonly diagnostics: readonly Diagnostic[];
}
