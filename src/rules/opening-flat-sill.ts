import { isSolid, type Inside, type Opening, type Wall } from "../model/index.js";
import type { SolvedPlan } from "../solver/index.js";
import { drains, fallRatio, isOverWater, leastFall, wantedFall } from "./fall.js";
import type { Finding, Rule } from "./rule.js";
import { FALL } from "./trade.js";
import { lengthOff, openingName } from "./words.js";

/**
 * What lies level over a pan or a tub and doesn't drain: the sill of a niche or a window, the top of a
 * bench or a curb. Of one whose depth the plan doesn't state nothing is known; one that falls back into
 * the wall is `opening/back-slope`'s.
 */
export const openingFlatSill: Rule = {
  code: "opening/flat-sill",
  severity: "warning",
  title: "a sill, or a bench's or a curb's top, over a pan or a tub falls under 1/4 in per ft",
  source: FALL.source,
  limit: "fall",
  check: ({ wall }, plan) =>
    isOverWater(wall)
      ? wall.openings.flatMap((opening) => findFlat(opening, wall, plan) ?? [])
      : [],
};

function findFlat(opening: Opening, wall: Wall, plan: SolvedPlan): Finding | null {
  const { inside } = opening;
  if (!inside || (inside.fall !== null && inside.fall < 0)) return null;
  const least = fallRatio(plan.plan.limits);
  if (inside.fall !== null && drains(inside.fall, inside, least)) return null;
  const what = `the ${isSolid(opening) ? "top" : "sill"} of ${openingName(opening)}`;
  const wanted = wantedFall(plan, inside);
  const found = { origin: opening.origin, blocks: [opening, wall] };
  if (inside.fall === null) {
    const message = `the plan doesn't say how ${what} falls; ${wanted}`;
    return { ...found, severity: "information", message };
  }
  const enough = leastFall(inside.depth, least, plan.plan.units);
  return { ...found, message: `${what} ${fallWords(inside.fall, enough, plan)}; ${wanted}` };
}

function fallWords(fall: NonNullable<Inside["fall"]>, enough: number, plan: SolvedPlan): string {
  return fall === 0 ? "is flat" : `falls ${lengthOff(plan, fall, enough)}`;
}
