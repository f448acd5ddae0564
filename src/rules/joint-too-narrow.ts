import type { Rule } from "./rule.js";
import { JOINT, leastJoint, lengthLimit } from "./trade.js";
import { length, lengthOff } from "./words.js";

/** A joint that the lot's variation in size would eat up, or that is too narrow to fill. */
export const jointTooNarrow: Rule = {
  code: "joint/too-narrow",
  severity: "error",
  title: "the joint is under three times the tile's variation in size, or under 1/16 in",
  source: JOINT.source,
  limit: "joint",
  insides: "own lay",
  check: (wall, plan) =>
    wall.lays.flatMap(({ lay, joint }) => {
      const least = lengthLimit(plan.plan.limits, "joint", JOINT.least);
      const varied = JOINT.perVariation * (lay.tile.variation ?? 0);
      const wanted = leastJoint(plan.plan.limits, lay.tile.variation);
      if (joint >= wanted) return [];
      const why =
        varied > least
          ? `, ${JOINT.perVariation} x the ${length(plan, lay.tile.variation!)} by which the tile varies,`
          : "";
      return [
        {
          origin: lay.joint.origin,
          blocks: [lay, lay.tile, wall.wall],
          message: `the joint is ${lengthOff(plan, joint, wanted)}; at least ${length(plan, wanted)}${why} is wanted`,
        },
      ];
    }),
};
