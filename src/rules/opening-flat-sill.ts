import { isSolid, type Inside, type Opening, type Wall } from "../model/index.js";
import type { SolvedPlan } from "../solver/index.js";
import { drains, fallRatio, leastFall } from "./fall.js";
import type { Finding, Rule } from "./rule.js";
import { FALL } from "./trade.js";
import { length, lengthOff, openingName, ratio } from "./words.js";

/**
 * What lies level over a pan or a tub and doesn't drain: the sill of a niche or a window, the top of a
 * bench or a curb. Of one whose depth the plan doesn't state nothing is known.
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

function isOverWater({ edges: { bottom } }: Wall): boolean {
  return bottom.meets.kind === "pan" || bottom.meets.kind === "tub";
}

function findFlat(opening: Opening, wall: Wall, plan: SolvedPlan): Finding | null {
  const { inside } = opening;
  const least = fallRatio(plan.plan.limits);
  if (!inside || (inside.fall !== null && drains(inside.fall, inside, least))) return null;
  const { units } = plan.plan;
  const enough = leastFall(inside.depth, least, units);
  const what = `the ${isSolid(opening) ? "top" : "sill"} of ${openingName(opening)}`;
  const wanted =
    `at least ${ratio(least)} of its depth of ${length(plan, inside.depth)}, so ${length(plan, enough)}, ` +
    `towards the room is wanted`;
  const found = { origin: opening.origin, blocks: [opening, wall] };
  if (inside.fall === null) {
    const message = `the plan doesn't say how ${what} falls; ${wanted}`;
    return { ...found, severity: "information", message };
  }
  const message = `${what} ${fallWords(inside.fall, enough, plan)}; ${wanted}`;
  // Water and waterproofing are never traded: what leads water into the wall is no matter of taste.
  return inside.fall < 0 ? { ...found, severity: "error", message } : { ...found, message };
}

function fallWords(fall: NonNullable<Inside["fall"]>, enough: number, plan: SolvedPlan): string {
  if (fall < 0) {
    return `falls ${length(plan, -fall)} back into the wall, where water stands and works its way in`;
  }
  return fall === 0 ? "is flat" : `falls ${lengthOff(plan, fall, enough)}`;
}
