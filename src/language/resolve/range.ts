import { formatLength, type Nm } from "../../measure/index.js";
import type { Range } from "../../model/index.js";
import type { Expression } from "../syntax.js";
import { type Bound, lengthOf } from "./lengths.js";
import type { Scope } from "./scope.js";

/** A length, or the lower end of a range and the range. */
export interface Ranged {
  readonly from: Nm;
  /** null for one length. */
  readonly range: Range | null;
}

/** A length or a range of lengths; a reversed range is told and turned round. null where one can't be read. */
export function rangeOf(
  from: Expression,
  to: Expression | null,
  bound: Bound,
  scope: Scope,
  wall: string,
): Ranged | null {
  const min = lengthOf(from, bound, scope, wall);
  const max = to ? lengthOf(to, bound, scope, wall) : min;
  if (min === null || max === null) return null;
  if (min === max) return { from: min, range: null };
  if (min < max) return { from: min, range: { min, max } };
  const [first, second] = [min, max].map((nm) => formatLength(nm, scope.units));
  const message = `found a range from ${first!} to ${second!}, wanted the smaller length first`;
  scope.report.tell("plan/range", to!, message, { wall });
  return { from: max, range: { min: max, max: min } };
}
