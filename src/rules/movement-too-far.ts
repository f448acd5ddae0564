import type { Side, Wall } from "../model/index.js";
import type { Nm } from "../measure/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import type { Rule } from "./rule.js";
import { type Stretch, type StretchEnd, softStretches, stretchLength } from "./soft-stretches.js";
import { softPlace } from "./soft-words.js";
import { lengthLimit, MOVEMENT_APART } from "./trade.js";
import { length, lengthOff } from "./words.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** Tile so wide or high between soft joints that it wants one more within the field. */
export const movementTooFar: Rule = {
  code: "movement/too-far",
  severity: "warning",
  title: "soft joints stand over 25 ft apart, or over 12 ft on a wall over a pan or a tub",
  source: MOVEMENT_APART.source,
  limit: "apart",
  // A joint can be left soft until it is grouted, also between courses that are set.
  ofSet: true,
  check: (wall, plan) =>
    wall.lays.slice(0, 1).flatMap(({ lay }) =>
      farStretches(wall, plan).map((stretch) => ({
        origin: wall.wall.origin,
        blocks: [lay, lay.tile, wall.wall],
        message: messageOf(stretch, wall, plan),
      })),
    ),
};

/** The stretches of a wall's tile that are too far from soft joint to soft joint; of those within each other the longest. */
export function farStretches(wall: SolvedWall, plan: SolvedPlan): Stretch[] {
  const most = mostApart(wall, plan);
  return (["wide", "high"] as const).flatMap((way) => {
    if (tileLength(wall, way) <= most) return [];
    const far = softStretches(wall, way).filter((stretch) => stretchLength(stretch) > most);
    return far.filter((stretch) => !far.some((other) => other !== stretch && isIn(stretch, other)));
  });
}

/** How wide, or how high, all tile of a wall is together: no stretch of it is longer. */
function tileLength({ lays }: SolvedWall, way: Stretch["way"]): Nm {
  const [low, high] = way === "wide" ? (["left", "right"] as const) : (["bottom", "top"] as const);
  let [from, to] = [Infinity, -Infinity];
  for (const { region } of lays) {
    from = Math.min(from, region.bounds[low]);
    to = Math.max(to, region.bounds[high]);
  }
  return to - from;
}

function isIn(inner: Stretch, outer: Stretch): boolean {
  return outer.from.at <= inner.from.at && inner.to.at <= outer.to.at;
}

/** How far apart the soft joints of a wall may stand. */
export function mostApart({ wall }: SolvedWall, { plan }: SolvedPlan): Nm {
  const usual = isWet(wall) ? MOVEMENT_APART.wet : MOVEMENT_APART.dry;
  return lengthLimit(plan.limits, "apart", usual);
}

function messageOf(stretch: Stretch, wall: SolvedWall, plan: SolvedPlan): string {
  const most = mostApart(wall, plan);
  const far = lengthOff(plan, stretchLength(stretch), most);
  return (
    `the tile is ${far} ${stretch.way} ${placeOf(stretch, plan)}` +
    `; at most ${length(plan, most)}${isWet(wall.wall) ? " over a pan or a tub" : ""} is wanted`
  );
}

function placeOf({ way, from, to }: Stretch, plan: SolvedPlan): string {
  if (!from.joint && !to.joint) return "without a soft joint in it";
  const [first, last] = way === "wide" ? ["left", "right"] : ["bottom", "top"];
  const end = ({ joint }: StretchEnd, side: string): string =>
    joint ? `the soft joint ${softPlace(joint.name, plan.plan.units)}` : `its ${side}`;
  return `from ${end(from, first)} to ${end(to, last)}`;
}

function isWet({ edges }: Wall): boolean {
  return SIDES.some((side) => {
    const { kind } = edges[side].meets;
    return kind === "pan" || kind === "tub";
  });
}
