import type { Nm } from "../measure/index.js";
import type { Fact, FactName, Subject, Value } from "./comparison.js";

/** A fact as it was and as it is; nothing where the two say the same. */
export function factOf(
  subject: Subject,
  name: FactName,
  before: Value | null,
  after: Value | null,
  which: string | Nm | null = null,
): Fact[] {
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  return [{ subject, name, which, before, after }];
}

export function length(nm: Nm): Value;
export function length(nm: Nm | null): Value | null;
export function length(nm: Nm | null): Value | null {
  return nm === null ? null : { kind: "length", nm };
}

export function size(across: Nm, up: Nm): Value {
  return { kind: "size", across, up };
}

export function words(text: string): Value;
export function words(text: string | null): Value | null;
export function words(text: string | null): Value | null {
  return text === null ? null : { kind: "words", words: text };
}

export function count(number: number | null): Value | null {
  return number === null ? null : { kind: "count", count: number };
}
