import { compare, type Comparison } from "../compare/index.js";
import type { Outcome } from "../engine.js";

/** Comparisons that were asked for last: a lens, marks and a picture of one version ask for the same. */
export class Compared {
  readonly #known = new WeakMap<
    Outcome,
    { readonly old: Outcome; readonly comparison: Comparison }
  >();

  of(old: Outcome, now: Outcome): Comparison {
    const known = this.#known.get(now);
    if (known?.old === old) return known.comparison;
    const comparison = compare(old, now);
    this.#known.set(now, { old, comparison });
    return comparison;
  }
}

/** Whether the whole of a text could be understood, so that nothing is missing from its walls. */
export function isWhole({ diagnostics }: Outcome): boolean {
  return !diagnostics.some(
    ({ code, severity }) => severity === "error" && /^(syntax|plan)\//.test(code),
  );
}
