import { movementPlaces } from "./movement-places.js";
import type { Rule } from "./rule.js";
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
  check: ({ wall }, plan) => {
    if (wall.lays.length === 0) return [];
    const { limits } = plan.plan;
    const least = leastMovement(limits);
    return movementPlaces(wall).flatMap(({ origin, blocks, name, narrowToo, soft }) => {
      if (soft === null || soft >= least) return [];
      const usual = narrowToo && !limits.movement && soft >= MOVEMENT_WIDTH.leastBeside;
      const message =
        `the soft joint ${name} is ${lengthOff(plan, soft, least)}; at least ${length(plan, least)} is wanted` +
        (usual
          ? `, though ${length(plan, MOVEMENT_WIDTH.leastBeside)} is common practice here`
          : "");
      return [{ origin, blocks, message, severity: usual ? "information" : "warning" }];
    });
  },
};
