import type { Nm } from "../measure/index.js";
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

/** What a `let` comes to: a length, or a plain number (a length over a length). */
export type LetValue =
  | { readonly kind: "length"; readonly nm: Nm }
  | { readonly kind: "number"; readonly value: number };

/** A text as far as it could be understood; what could not is in the diagnostics. */
export interface Resolved {
  readonly plan: Plan;
  /** Every named length, also of used files; null where it can't be worked out. */
  readonly lets: ReadonlyMap<string, LetValue | null>;
  readonly diagnostics: readonly Diagnostic[];
}
