import type { Diagnostic, Severity } from "../model/index.js";

/** How many findings of each kind there are; allowed ones count apart. */
export interface Tally extends Readonly<Record<Severity, number>> {
  readonly allowed: number;
}

/** What the process ends with. */
export const EXIT = { clean: 0, found: 1, failed: 2 } as const;

export function tallyOf(diagnostics: readonly Diagnostic[]): Tally {
  const tally = { error: 0, warning: 0, information: 0, allowed: 0 };
  for (const found of diagnostics)
    tally[found.allowed === undefined ? found.severity : "allowed"]++;
  return tally;
}

/** 1 when an error was found, or, when `strict`, a warning. */
export function exitOf(tally: Tally, strict: boolean): number {
  return tally.error > 0 || (strict && tally.warning > 0) ? EXIT.found : EXIT.clean;
}

/** `2 errors, 1 warning and 3 notes`; `no errors, no warnings` when there is nothing. */
export function tallyWords(tally: Tally): string {
  const parts = [counted(tally.error, "error"), counted(tally.warning, "warning")];
  if (tally.information > 0) parts.push(counted(tally.information, "note"));
  if (tally.allowed > 0) parts.push(`${tally.allowed} allowed`);
  return parts.join(", ");
}

/** `1 plan`, `4 plans`, `no plans`. */
export function counted(count: number, noun: string): string {
  return `${count === 0 ? "no" : count} ${noun}${count === 1 ? "" : "s"}`;
}
