import type { Nm } from "../measure/index.js";
import {
  type CornerMeeting,
  type Edge,
  isCorner,
  type Meeting,
  type Side,
} from "../model/index.js";
import {
  cornerGap,
  isTold,
  meetingLays,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";

/** The side of a wall at a corner. */
export type EndSide = Side & ("left" | "right");

/** One wall at a corner, with its tile. */
export interface CornerWall {
  readonly wall: SolvedWall;
  readonly lay: SolvedLay;
  readonly side: EndSide;
}

/** A corner that both walls agree on, where both are tiled. */
export interface Corner {
  /** The wall whose tile covers the other's end: it is set last, and follows. */
  readonly over: CornerWall;
  readonly under: CornerWall;
  /** The covering wall's side. */
  readonly edge: Edge;
  /** What stands between the two walls' tile, along the surface. */
  readonly gap: Nm;
}

const END_SIDES: readonly EndSide[] = ["left", "right"];

/** Two walls at a corner that both agree on, seen from the one whose tile covers the other's. */
export interface WallCorner {
  readonly side: EndSide;
  readonly edge: Edge;
  readonly other: SolvedWall;
  /** The other wall's side, and its edge. */
  readonly answer: EndSide;
  readonly back: Edge;
}

/** The corners of walls at which this one's tile covers another's, so that each is looked at once. */
export function wallCornersOver(wall: SolvedWall, { walls }: SolvedPlan): WallCorner[] {
  return END_SIDES.flatMap((side) => {
    const edge = wall.wall.edges[side];
    const { meets } = edge;
    if (!isCorner(meets) || !isTold(meets, side)) return [];
    const other = walls.find(({ wall: { name } }) => name === meets.wall);
    const answer = side === "left" ? "right" : "left";
    const back = other?.wall.edges[answer];
    if (!other || !back || !answers(back.meets, meets, wall.wall.name)) return [];
    return [{ side, edge, other, answer, back }];
  });
}

/** The corners at which a lay of this wall meets one of another's, lay by lay. */
export function cornersOver(wall: SolvedWall, plan: SolvedPlan): Corner[] {
  return wallCornersOver(wall, plan).flatMap(({ side, edge, other, answer, back }) => {
    const ends = [
      { wall, side },
      { wall: other, side: answer },
    ] as const;
    return meetingLays(...ends).map(({ lay, other: otherLay }) => {
      const joint = { edge: back, joint: otherLay.joint };
      const gap = cornerGap(plan.plan, { edge, joint: lay.joint }, joint);
      return { over: { ...ends[0], lay }, under: { ...ends[1], lay: otherLay }, edge, gap };
    });
  });
}

function answers(back: Meeting, meets: CornerMeeting, wall: string): boolean {
  if (back.kind !== meets.kind || !isCorner(back) || back.wall !== wall) return false;
  return back.lap === (meets.lap === "mitre" ? "mitre" : "under");
}
