import type { Nm } from "../measure/index.js";
import { type CornerMeeting, isCorner, type Wall } from "../model/index.js";
import type { Box } from "./box.js";
import type { CornerPair } from "./room/corners.js";
import type { SolvedLay } from "./solved.js";

/** A lay where it stands on its wall. */
export type LayStanding = Pick<SolvedLay, "region" | "inner">;

/** One wall's end at a corner, with the wall's lays. */
export interface WallEnd<Of extends LayStanding = SolvedLay> {
  readonly wall: { readonly wall: Wall; readonly lays: readonly Of[] };
  readonly side: "left" | "right";
}

/** Two lays that meet at a corner. */
export interface MeetingLays<Of extends LayStanding = SolvedLay> {
  readonly lay: Of;
  readonly other: Of;
}

/** The lays that meet at a corner: each of one wall's that reaches it, with the other's that stands beside most of it. */
export function meetingLays<Of extends LayStanding>(
  one: WallEnd<Of>,
  other: WallEnd<Of>,
): MeetingLays<Of>[] {
  return laysAt(one).flatMap((lay) => {
    const beside = besideMost(lay.region.bounds, other);
    return beside ? [{ lay, other: beside }] : [];
  });
}

/** The lay that reaches a wall's end and stands beside most of a stretch of height; null where none does. */
export function besideMost<Of extends LayStanding>(
  { bottom, top }: Pick<Box, "bottom" | "top">,
  end: WallEnd<Of>,
): Of | null {
  const beside = ({ region: { bounds } }: Of): Nm =>
    Math.min(top, bounds.top) - Math.max(bottom, bounds.bottom);
  const [first, ...rest] = laysAt(end).filter((lay) => beside(lay) > 0);
  if (!first) return null;
  return rest.reduce((most, lay) => (beside(lay) > beside(most) ? lay : most), first);
}

/** The two ends at a corner; the wall that it is told of comes first. */
export function endsAt<Of extends LayStanding>(
  one: WallEnd<Of>["wall"],
  other: WallEnd<Of>["wall"],
  end: CornerPair["end"],
): readonly [WallEnd<Of>, WallEnd<Of>] {
  const [own, its]: readonly [WallEnd<Of>, WallEnd<Of>] = [
    { wall: one, side: end },
    { wall: other, side: end === "left" ? "right" : "left" },
  ];
  const { meets } = one.wall.edges[end];
  return isCorner(meets) && isTold(meets, end) ? [own, its] : [its, own];
}

/**
 * Whether a corner is told of, and measured from, the wall whose end is at this side of it: the one that laps over, since
 * it is set last; of a mitre's walls the one at the right of the corner.
 */
export function isTold({ lap }: CornerMeeting, side: WallEnd["side"]): boolean {
  return lap === "over" || (lap === "mitre" && side === "left");
}

/** The lays that reach the wall's own side. */
function laysAt<Of extends LayStanding>({ wall, side }: WallEnd<Of>): readonly Of[] {
  return wall.lays.filter((lay) => !lay.inner.includes(side));
}
