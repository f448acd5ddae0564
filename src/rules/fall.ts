import { NM_PER, type Nm, type Unit } from "../measure/index.js";
import type { Inside, Limits, Wall } from "../model/index.js";
import type { SolvedPlan } from "../solver/index.js";
import { FALL, type Ratio, ratioLimit } from "./trade.js";
import { length, ratio } from "./words.js";

/** The least part of its depth that a sill falls by. */
export function fallRatio(limits: Limits): Ratio {
  return ratioLimit(limits, "fall", FALL.least);
}

/** Whether a sill falls by the limit or more, to the nanometre; a depth times a term may pass 2^53. */
export function drains(fall: Nm, { depth }: Pick<Inside, "depth">, { p, q }: Ratio): boolean {
  return fall >= 0 && BigInt(q) * BigInt(fall) >= BigInt(p) * BigInt(depth);
}

/**
 * The least fall that drains and that can be marked: on the next 1/32 in, or the next 0.1 mm, which
 * is as fine as people are shown a length.
 */
export function leastFall(depth: Nm, { p, q }: Ratio, units: Unit): Nm {
  const step = units === "inch" || units === "foot" ? NM_PER.inch / 32 : NM_PER.mm / 10;
  const [over, under] = [BigInt(p) * BigInt(depth), BigInt(q) * BigInt(step)];
  return step * Number((over + under - 1n) / under);
}

/** Whether what lies level on a wall gets wet: the wall stands on a pan or a tub. */
export function isOverWater({ edges: { bottom } }: Pick<Wall, "edges">): boolean {
  return bottom.meets.kind === "pan" || bottom.meets.kind === "tub";
}

/** The fall that a sill, or a top, is to have. Where the plan turns its limit off, the trade's. */
export function wantedFall(plan: SolvedPlan, { depth }: Pick<Inside, "depth" | "fall">): string {
  const least = fallRatio(plan.plan.limits);
  const enough = leastFall(depth, least, plan.plan.units);
  return (
    `at least ${ratio(least)} of its depth of ${length(plan, depth)}, so ${length(plan, enough)}, ` +
    `towards the room is wanted`
  );
}
