import type { Nm } from "../measure/index.js";
import { type Hole, plateSize } from "../model/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, lengthLimit, PLATE_LAP } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * A plate that laps too little over the hole it is to cover: a hole is never cut quite in its place, and the
 * plate's seal sits on the tile. One that is smaller than its hole leaves the cut bare.
 */
export const holePlateSmall: Rule = {
  code: "hole/plate-small",
  severity: "warning",
  title: "a plate laps under 1/4 in over the hole that it covers",
  source: COMMON_PRACTICE,
  limit: "plate",
  check: (wall, plan) => wall.wall.holes.flatMap((hole) => findSmall(hole, wall, plan)),
};

/** Twice what a plate laps over its hole at its narrower sides, so that half a nanometre isn't lost. */
export function twiceLap({ plate, across }: Hole): Nm {
  if (!plate) return Infinity;
  const size = plateSize(plate);
  return Math.min(size.across, size.up) - across;
}

/** How far a plate is to lap over its hole. */
export function leastLap({ plan: { limits } }: SolvedPlan): Nm {
  return lengthLimit(limits, "plate", PLATE_LAP);
}

function findSmall(hole: Hole, { wall }: SolvedWall, plan: SolvedPlan): Finding[] {
  const least = leastLap(plan);
  const twice = twiceLap(hole);
  if (twice >= 2 * least) return [];
  const found = { origin: hole.origin, blocks: [wall] };
  const wanted =
    `at least ${length(plan, least)} all round, so a plate of ${length(plan, hole.across + 2 * least)} ` +
    `or more, is wanted`;
  if (twice < 0) {
    const bare = `leaves its hole of ${length(plan, hole.across)} bare by ${length(plan, Math.ceil(-twice / 2))}`;
    return [
      { ...found, severity: "error", message: `the plate of ${hole.name} ${bare}; ${wanted}` },
    ];
  }
  const laps = lengthOff(plan, Math.floor(twice / 2), least);
  return [{ ...found, message: `the plate of ${hole.name} laps ${laps} over its hole; ${wanted}` }];
}
