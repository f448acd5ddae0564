import type { Nm } from "../measure/index.js";
import type { CornerMeeting } from "../model/index.js";
import type { Box } from "./box.js";
import type { SolvedLay, SolvedWall } from "./solved.js";

/** One wall's end at a corner. */
export interface WallEnd {
  readonly wall: SolvedWall;
  readonly side: "left" | "right";
}

/** Two lays that meet at a corner. */
export interface MeetingLays {
  readonly lay: SolvedLay;
  readonly other: SolvedLay;
}

/** The lays that meet at a corner: each of one wall's that reaches it, with the other's that stands beside most of it. */
export function meetingLays(one: WallEnd, other: WallEnd): MeetingLays[] {
  return laysAt(one).flatMap((lay) => {
    const beside = besideMost(lay.region.bounds, other);
    return beside ? [{ lay, other: beside }] : [];
  });
}

/** The lay that reaches a wall's end and stands beside most of a stretch of height; null where none does. */
export function besideMost(
  { bottom, top }: Pick<Box, "bottom" | "top">,
  end: WallEnd,
): SolvedLay | null {
  const beside = ({ region: { bounds } }: SolvedLay): Nm =>
    Math.min(top, bounds.top) - Math.max(bottom, bounds.bottom);
  const [first, ...rest] = laysAt(end).filter((lay) => beside(lay) > 0);
  if (!first) return null;
  return rest.reduce((most, lay) => (beside(lay) > beside(most) ? lay : most), first);
}

/**
 * Whether a corner is told of, and measured from, the wall whose end is at this side of it: the one that laps over, since
 * it is set last; of a mitre's walls the one at the right of the corner.
 */
export function isTold({ lap }: CornerMeeting, side: WallEnd["side"]): boolean {
  return lap === "over" || (lap === "mitre" && side === "left");
}

/** The lays that reach the wall's own side. */
function laysAt({ wall, side }: WallEnd): readonly SolvedLay[] {
  return wall.lays.filter((lay) => !lay.inner.includes(side));
}
