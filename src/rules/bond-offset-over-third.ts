import type { Rule } from "./rule.js";
import { OFFSET, ratioLimit, smallerOffset } from "./trade.js";
import { length, ratio } from "./words.js";

/**
 * Long tile offset by more than a third: its ends stand beside the middles of its neighbours, where
 * a bowed tile is highest. The side that counts is the one along the courses, by its real size.
 */
export const bondOffsetOverThird: Rule = {
  code: "bond/offset-over-third",
  severity: "error",
  title: "tile with its offset side over 15 in is offset by more than a third",
  source: OFFSET.source,
  limit: "offset",
  insides: "own lay",
  check: (wall, plan) =>
    wall.lays.flatMap(({ lay }) => {
      if (lay.bond.kind !== "running" || lay.tile.face.across <= OFFSET.sideOver) return [];
      const offset = smallerOffset(lay.bond);
      const most = ratioLimit(plan.plan.limits, "offset", OFFSET.most);
      if (offset.p * most.q <= most.p * offset.q) return [];
      return [
        {
          origin: lay.origin,
          blocks: [lay, lay.tile, wall.wall],
          message:
            `the bond offsets tile ${length(plan, lay.tile.face.across)} long by ${ratio(offset)}; ` +
            `over ${length(plan, OFFSET.sideOver)}, at most ${ratio(most)} is wanted`,
        },
      ];
    }),
};
