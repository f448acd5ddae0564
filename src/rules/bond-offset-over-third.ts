import type { Lay, Limits } from "../model/index.js";
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
      const { limits } = plan.plan;
      if (lay.bond.kind !== "running" || !isOffsetTooWide(limits, lay)) return [];
      const offset = smallerOffset(lay.bond);
      const most = ratioLimit(limits, "offset", OFFSET.most);
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

/** Whether a bond offsets tile so long that its ends may not stand so near its neighbours' middles. */
export function isOffsetTooWide(
  limits: Limits,
  { tile, bond }: Pick<Lay, "tile" | "bond">,
): boolean {
  if (limits.offset?.kind === "off") return false;
  if (bond.kind !== "running" || tile.face.across <= OFFSET.sideOver) return false;
  const offset = smallerOffset(bond);
  const most = ratioLimit(limits, "offset", OFFSET.most);
  return offset.p * most.q > most.p * offset.q;
}
