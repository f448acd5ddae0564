import type { Nm } from "../../measure/index.js";
import { formatLength, LONGEST, NM_PER, roundToWhole } from "../../measure/index.js";
import type { Expression } from "../syntax.js";
import { asLength, evaluate } from "./evaluate.js";
import type { Scope } from "./scope.js";

/** What a length must be. */
export type Bound = "positive" | "not-negative" | "any";

/** The whole nanometres of an expression, or null when it has none or breaks its bound (which is told). */
export function lengthOf(
  expression: Expression,
  bound: Bound,
  scope: Scope,
  wall?: string,
): Nm | null {
  const value = evaluate(expression, scope);
  if (!value) return null;
  const { report, units } = scope;
  if (value.kind === "ratio") {
    const message = "found a plain number (a length over a length), wanted a length";
    report.tell("plan/arithmetic", expression, message, { wall });
    return null;
  }
  const nm = Number(roundToWhole(asLength(value, scope).amount));
  if (Math.abs(nm) > LONGEST) {
    const message = `found a length over ${LONGEST / NM_PER.m / 1000} km, wanted one of a wall`;
    report.tell("plan/too-long", expression, message, { wall });
    return null;
  }
  const wanted = wantedOf(bound, nm);
  if (wanted === null) return nm;
  const message = `found ${formatLength(nm, units)}, wanted ${wanted}`;
  report.tell("plan/size", expression, message, { wall });
  return null;
}

function wantedOf(bound: Bound, nm: Nm): string | null {
  if (bound === "positive" && nm <= 0) return "more than zero";
  return bound === "not-negative" && nm < 0 ? "zero or more" : null;
}
