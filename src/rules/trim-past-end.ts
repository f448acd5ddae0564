import type { Nm } from "../measure/index.js";
import { type Edge, edgeTrim, type Opening, type Side } from "../model/index.js";
import {
  bareSide,
  type Box,
  frameOuter,
  rangeBetween,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { sideInside, SIDES } from "./side-line.js";
import { COMMON_PRACTICE } from "./trade.js";
import { edgeMeets, length, openingName } from "./words.js";

/** A frame that reaches past a side of the wall or into a step of its outline, or into the joint, the other wall's tile or the trim there. */
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
  /** The side of the frame. */
  readonly side: Side;
  readonly by: Nm;
  readonly pastWall: Nm;
  /** What the tile meets there. */
  readonly edge: Edge;
  /** The side that a step is of where the frame reaches into one; null at the wall's own side. */
  readonly stepOf: "bottom" | "top" | null;
}

/** Where an opening's frame reaches past the tile; what goes on to the floor or the ceiling does so on purpose. */
export function overreaches(solved: SolvedWall, opening: Opening): Overreach[] {
  const outer = frameOuter(opening);
  if (!outer) return [];
  const onPurpose = { floor: "bottom", ceiling: "top" } as const;
  const ends = opening.reaches && onPurpose[opening.reaches];
  return [...pastSides(solved, outer, ends), ...intoSteps(solved, outer, ends)];
}

type Ends = "bottom" | "top" | null;

function pastSides({ wall, region }: SolvedWall, outer: Box, ends: Ends): Overreach[] {
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
    const edge = wall.edges[side];
    const bare = bareSide(edge, base[side]);
    const pastWall = sideInside(bare, outer, side, along).deepest;
    return [{ side, by, pastWall, edge, stepOf: null }];
  });
}

/** A step is left the short way; on those of the side that it goes on to a frame stands. */
function intoSteps({ wall, region }: SolvedWall, outer: Box, ends: Ends): Overreach[] {
  return wall.steps.flatMap((step, i): Overreach[] => {
    const stepOf = step.meets.top ? "bottom" : "top";
    if (stepOf === ends) return [];
    const ways = SIDES.flatMap((side): Overreach[] => {
      const edge = step.meets[OPPOSITE[side]];
      const by = depth(outer, region.steps[i]!, side);
      const pastWall = depth(outer, step, side);
      return edge ? [{ side, by, pastWall, edge, stepOf }] : [];
    });
    const by = Math.min(...ways.map((way) => way.by));
    const pastWall = Math.min(...ways.map((way) => way.pastWall));
    if (ways.length === 0 || by <= 0) return [];
    return [{ ...ways.find((way) => way.by === by)!, pastWall }];
  });
}

const OPPOSITE = { left: "right", right: "left", bottom: "top", top: "bottom" } as const;

/** How deep the side of a box lies past the facing side of a step. */
function depth(outer: Box, step: Box, side: Side): Nm {
  const past = outer[side] - step[OPPOSITE[side]];
  return side === "right" || side === "top" ? past : -past;
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
  { side, by, pastWall, edge, stepOf }: Overreach,
): Finding {
  const frame = opening.frame!;
  const isPast = pastWall > 0;
  const into = `into ${whatIsAt(edge, by)} at`;
  const atSide = isPast ? `past the ${side} of the wall` : `${into} the ${side}`;
  const atStep = `${isPast ? "past the wall at" : into} a step of the ${stepOf}`;
  const where = stepOf ? atStep : atSide;
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
