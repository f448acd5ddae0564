import type { Diagnostic } from "../model/index.js";
import { setWords } from "../rules/index.js";
import type { FindingChange } from "./comparison.js";
import { type CommonName, OWN_NAMES } from "./alignments.js";

/**
 * Findings that came, went, or are there with other figures, another weight or another waiver. What
 * is found at the same place in the same words is the same finding, whatever its line in the text.
 */
export function findingChanges(
  before: readonly Diagnostic[],
  after: readonly Diagnostic[],
  common: { readonly before: CommonName; readonly after: CommonName },
): FindingChange[] {
  const twinOf = new Map<Told, Told>();
  let left = before.map((found) => tell(found, common.before));
  const right = after.map((found) => tell(found, common.after));
  // What was found before goes on in what can be mended; the rest of it has become what is set.
  let open = [...right].sort(
    (a, b) => Number(a.found.set !== undefined) - Number(b.found.set !== undefined),
  );
  for (const keyOf of [toTheWord, exceptFigures]) {
    const groups = grouped(open, keyOf);
    left = left.filter((told) => {
      const twin = groups.get(keyOf(told))?.shift();
      if (twin) twinOf.set(twin, told);
      return !twin;
    });
    open = open.filter((told) => !twinOf.has(told));
  }
  const changed = right.flatMap((now): FindingChange[] => {
    const old = twinOf.get(now);
    if (!old) return [{ before: null, after: now.found }];
    return isSame(old, now) ? [] : [{ before: old.found, after: now.found }];
  });
  return [...left.map(({ found }) => ({ before: found, after: null })), ...changed];
}

interface Told {
  readonly found: Diagnostic;
  readonly where: string;
  /** With the names that both plans share. */
  readonly message: string;
}

function grouped<T>(list: readonly T[], keyOf: (item: T) => string): ReadonlyMap<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of list) {
    const group = groups.get(keyOf(item));
    if (group) group.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return groups;
}

function tell(found: Diagnostic, common: CommonName): Told {
  return {
    found,
    where: `${found.code} ${found.wall === undefined ? "" : common(found.wall)}`,
    message: inCommonNames(withoutSet(found), common),
  };
}

function inCommonNames(message: string, common: CommonName): string {
  if (common === OWN_NAMES) return message;
  return message.replace(/[\p{L}][\p{L}\p{N}_-]*/gu, (word) => common(word));
}

/** What is set and what isn't is one finding where it says the same of both. */
function withoutSet({ message, set }: Diagnostic): string {
  return set === undefined ? message : message.slice(0, -setWords(set).length);
}

function toTheWord({ where, message }: Told): string {
  return `${where} ${message}`;
}

function exceptFigures({ where, message }: Told): string {
  const words = message
    .replace(/just (under|over) /g, "")
    .replace(/\d[\d/.]*(?:[ -]\d+\/\d+)?[+-]?/g, "0")
    .replace(/0 (\S+) to 0 \1/g, "0 $1")
    .replace(/\bpieces\b/g, "piece")
    .replace(/\bare\b/g, "is");
  return `${where} ${words}`;
}

function isSame(a: Told, b: Told): boolean {
  const [old, now] = [a.found, b.found];
  return (
    a.message === b.message &&
    old.severity === now.severity &&
    old.allowed === now.allowed &&
    old.set === now.set
  );
}
