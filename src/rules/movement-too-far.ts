import type { Nm } from "../measure/index.js";
import type { Side, Wall } from "../model/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { lengthLimit, MOVEMENT_APART } from "./trade.js";
import { length, lengthOff } from "./words.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/**
 * Tile so wide or high that it wants a soft joint within the field. A plan can't state one yet: the
 * wall is divided, or the finding allowed with the place of the joint as its reason.
 */
export const movementTooFar: Rule = {
  code: "movement/too-far",
  severity: "warning",
  title: "soft joints stand over 25 ft apart, or over 12 ft on a wall over a pan or a tub",
  source: MOVEMENT_APART.source,
  limit: "apart",
  check: (wall, plan) =>
    wall.lays.slice(0, 1).flatMap(({ lay }) => {
      const { left, right, bottom, top } = wall.region.bounds;
      const blocks = [lay, lay.tile, wall.wall];
      return [
        ...findFar(wall, plan, "wide", right - left),
        ...findFar(wall, plan, "high", top - bottom),
      ].map((finding) => ({ ...finding, blocks }));
    }),
};

function findFar(
  { wall }: SolvedWall,
  plan: SolvedPlan,
  way: "wide" | "high",
  far: Nm,
): Omit<Finding, "blocks">[] {
  const isInWet = isWet(wall);
  const usual = isInWet ? MOVEMENT_APART.wet : MOVEMENT_APART.dry;
  const most = lengthLimit(plan.plan.limits, "apart", usual);
  if (far <= most) return [];
  const message =
    `the tile is ${lengthOff(plan, far, most)} ${way} without a soft joint in it` +
    `; at most ${length(plan, most)}${isInWet ? " over a pan or a tub" : ""} is wanted`;
  return [{ origin: wall.origin, message }];
}

function isWet({ edges }: Wall): boolean {
  return SIDES.some((side) => {
    const { kind } = edges[side].meets;
    return kind === "pan" || kind === "tub";
  });
}
