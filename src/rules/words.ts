import { formatLength, type Nm } from "../measure/index.js";
import type { Edge, Opening } from "../model/index.js";
import type { LayPatch, SolvedPlan } from "../solver/index.js";
import type { Ratio } from "./trade.js";

/** A length in the plan's own units. */
export function length(plan: SolvedPlan, nm: Nm): string {
  return formatLength(nm, plan.plan.units);
}

/** A length that misses a limit, also where the two read alike: `just under 1 in`. */
export function lengthOff(plan: SolvedPlan, nm: Nm, limit: Nm): string {
  const found = length(plan, nm);
  if (nm === limit || found !== length(plan, limit)) return found;
  return `just ${nm < limit ? "under" : "over"} ${found}`;
}

/** Sizes that miss a limit: `7/8 in`, or `7/8 in to 1 1/4 in` where they differ. */
export function sizesOff(plan: SolvedPlan, least: Nm, most: Nm, limit: Nm): string {
  const low = lengthOff(plan, least, limit);
  const high = lengthOff(plan, most, limit);
  return low === high ? low : `${low} to ${high}`;
}

/** `1 piece`, `8 pieces`. */
export function pieceCount(count: number): string {
  return count === 1 ? "1 piece" : `${count} pieces`;
}

/** The form of a verb that goes with a count: `is` or `are`. */
export function verb(count: number, one: string, many: string): string {
  return count === 1 ? one : many;
}

/** `window sash`. */
export function openingName(opening: Opening | LayPatch): string {
  return `${opening.kind} ${opening.name}`;
}

/** What an edge meets: `pan`, `corner with left`. */
export function edgeMeets({ meets }: Edge): string {
  if (meets.kind === "outside") return `outside corner with ${meets.wall}`;
  return meets.kind === "corner" ? `corner with ${meets.wall}` : meets.kind;
}

/** `1/3`. */
export function ratio({ p, q }: Ratio): string {
  return `${p}/${q}`;
}
