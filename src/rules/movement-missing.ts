import { movementPlaces } from "./movement-places.js";
import type { Rule } from "./rule.js";
import { leastMovement, MOVEMENT_WHERE } from "./trade.js";
import { length } from "./words.js";

/** No soft joint where the tile meets another plane or another material. */
export const movementMissing: Rule = {
  code: "movement/missing",
  severity: "error",
  title: "no soft joint at a change of plane or at a dissimilar material",
  source: MOVEMENT_WHERE,
  limit: null,
  check: ({ wall }, plan) => {
    if (wall.lays.length === 0) return [];
    const wanted = leastMovement(plan.plan.limits);
    return movementPlaces(wall)
      .filter((place) => place.soft === null)
      .map(({ origin, blocks, name, hard }) => ({
        origin,
        blocks,
        message:
          `there is ${hard ? "only a hard joint" : "no soft joint"} ${name}; ` +
          `a movement joint of at least ${length(plan, wanted)} is wanted`,
      }));
  },
};
