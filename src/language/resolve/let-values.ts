import { LONGEST, roundToWhole } from "../../measure/index.js";
import type { LetValue } from "../source.js";
import { asLength, type Value } from "./evaluate.js";
import type { Scope } from "./scope.js";

/** What each `let` of a scope comes to; a bare number is a length in the file's units. */
export function letValues(scope: Scope): Map<string, LetValue | null> {
  const values = new Map<string, LetValue | null>();
  for (const [name, { value }] of scope.lets.entries()) {
    values.set(name, value && letValue(value, scope));
  }
  return values;
}

function letValue(value: Value, scope: Scope): LetValue | null {
  if (value.kind === "ratio") {
    const { numerator, denominator } = value.amount;
    return { kind: "number", value: Number(numerator) / Number(denominator) };
  }
  const nm = Number(roundToWhole(asLength(value, scope).amount));
  return Math.abs(nm) > LONGEST ? null : { kind: "length", nm };
}
