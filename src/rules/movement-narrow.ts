import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import { softJoints } from "../solver/index.js";
import { movementPlaces } from "./movement-places.js";
import type { Finding, Rule } from "./rule.js";
import { softPlace } from "./soft-words.js";
import { leastMovement, MOVEMENT_WIDTH } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * A soft joint that is narrower than the trade's least. Beside a window, a door, a pan or a tub
 * 1/16 in is common practice, so that from there on it is only mentioned; a limit of the plan's own
 * holds everywhere.
 */
export const movementNarrow: Rule = {
  code: "movement/narrow",
  severity: "warning",
  title: "a soft joint is under 1/8 in",
  source: MOVEMENT_WIDTH.source,
  limit: "movement",
  // A joint can be left soft until it is grouted, also between courses that are set.
  ofSet: true,
  check: (wall, plan) =>
    wall.lays.length === 0 ? [] : [...findAround(wall, plan), ...findWithin(wall, plan)],
};

/** At the wall's edges and round its openings. */
function findAround({ wall }: SolvedWall, plan: SolvedPlan): Finding[] {
  const { limits } = plan.plan;
  const least = leastMovement(limits);
  return movementPlaces(wall).flatMap(({ origin, blocks, name, narrowToo, soft }) => {
    if (soft === null || soft >= least) return [];
    const usual = narrowToo && !limits.movement && soft >= MOVEMENT_WIDTH.leastBeside;
    const message =
      `the soft joint ${name} is ${lengthOff(plan, soft, least)}; at least ${length(plan, least)} is wanted` +
      (usual ? `, though ${length(plan, MOVEMENT_WIDTH.leastBeside)} is common practice here` : "");
    return [{ origin, blocks, message, severity: usual ? "information" : "warning" }];
  });
}

/** In the tile, where a soft joint is as wide as the joint that it fills. */
function findWithin(wall: SolvedWall, plan: SolvedPlan): Finding[] {
  const least = leastMovement(plan.plan.limits);
  return softJoints(wall).runs.flatMap(({ origin, lay, name, from, to }) => {
    const width = to - from;
    if (width >= least) return [];
    const wanted =
      name.kind === "between"
        ? `at least ${length(plan, least)} is wanted`
        : `a joint of at least ${length(plan, least)}, as between two lays, is wanted`;
    const message = `the soft joint ${softPlace(name, plan.plan.units)} is ${lengthOff(plan, width, least)}; ${wanted}`;
    return [{ origin, blocks: [lay, lay.tile, wall.wall], message }];
  });
}
