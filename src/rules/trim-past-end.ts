import type { Nm } from "../measure/index.js";
import { type Edge, edgeTrim, type Opening, type Side } from "../model/index.js";
import {
  bareSide,
  frameOuter,
  rangeBetween,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { sideInside, SIDES } from "./side-line.js";
import { COMMON_PRACTICE } from "./trade.js";
import { edgeMeets, length, openingName } from "./words.js";

/** A frame that reaches past a side of the wall, or into the joint, the other wall's tile or the trim that is there. */
export const trimPastEnd: Rule = {
  code: "trim/past-end",
  severity: "warning",
  title: "a frame reaches past the wall's end, or into the joint or the trim there",
  source: COMMON_PRACTICE,
  limit: null,
  check: (wall, plan) =>
    wall.wall.openings.flatMap((opening) =>
      overreaches(wall, opening).map((over) => findPast(wall, plan, opening, over)),
    ),
};

/** How far a frame reaches past what is tiled at a side, and past the bare wall there (less than nothing: within it). */
export interface Overreach {
  readonly side: Side;
  readonly by: Nm;
  readonly pastWall: Nm;
}

/** At which sides an opening's frame reaches past the tile; what goes on to the floor or the ceiling does so on purpose. */
export function overreaches({ wall, region }: SolvedWall, opening: Opening): Overreach[] {
  const outer = frameOuter(opening);
  if (!outer) return [];
  const onPurpose = { floor: "bottom", ceiling: "top" } as const;
  const ends = opening.reaches && onPurpose[opening.reaches];
  const base = { left: 0, bottom: 0, right: wall.size.across, top: wall.size.up };
  // A door's frame stands on the floor: what is beside it counts over that alone.
  const along = {
    ...outer,
    bottom:
      ends === "bottom" ? Math.max(outer.bottom, floorOf(region.bottom, outer)) : outer.bottom,
  };
  return SIDES.filter((side) => side !== ends).flatMap((side): Overreach[] => {
    const by = sideInside(region[side], outer, side, along).deepest;
    if (by <= 0) return [];
    const bare = bareSide(wall.edges[side], base[side]);
    return [{ side, by, pastWall: sideInside(bare, outer, side, along).deepest }];
  });
}

function floorOf(
  bottom: SolvedWall["region"]["bottom"],
  { left, right }: { left: Nm; right: Nm },
): Nm {
  return rangeBetween(bottom, left, right).low;
}

function findPast(
  { wall }: SolvedWall,
  plan: SolvedPlan,
  opening: Opening,
  { side, by, pastWall }: Overreach,
): Finding {
  const frame = opening.frame!;
  const edge = wall.edges[side];
  const isPast = pastWall > 0;
  const where = isPast
    ? `past the ${side} of the wall`
    : `into ${whatIsAt(edge, by)} at the ${side}`;
  return {
    origin: frame.origin,
    blocks: [opening, frame.trim, wall],
    ...(isPast ? { severity: "error" as const } : {}),
    message:
      `the frame of ${openingName(opening)} reaches ${length(plan, isPast ? pastWall : by)} ${where}; ` +
      `its outer edge ${length(plan, by)} further in, where tile may end, is wanted`,
  };
}

function whatIsAt(edge: Edge, by: Nm): string {
  const { meets, joint } = edge;
  if (edgeTrim(meets)) return "the trim";
  const isLap = meets.kind === "corner" && meets.lap === "over";
  if (isLap && by > (joint?.width ?? 0)) return `the tile of ${meets.wall}`;
  return meets.kind === "free" ? "what ends the tile" : `the joint to the ${edgeMeets(edge)}`;
}
