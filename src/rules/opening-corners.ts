import type { Nm } from "../measure/index.js";
import type { SolvedLay, Takeaway } from "../solver/index.js";
import { headJointsOf } from "./head-joints.js";

/** At a corner of an opening: the head joint nearest to the line of the joint along its side. */
export interface CornerGap {
  /** Twice the distance between the middles of the two joints, so that half a nanometre is not lost. */
  readonly twiceApart: Nm;
  /** The pieces on both sides of the head joint. */
  readonly pieces: readonly number[];
}

/** Which course passes an opening. */
export type PassingWhere = "under" | "over";

/**
 * The corners at which a course passes under or over an opening and the courses beside the opening
 * end on the same bed joint. None where the opening's sill or head cuts into a course.
 */
export function cornerGaps(lay: SolvedLay, takeaway: Takeaway, where: PassingWhere): CornerGap[] {
  const passing = passingCourse(lay, takeaway, where);
  if (passing === null) return [];
  const beside = passing + (where === "under" ? 1 : -1);
  const heads = headJointsOf(lay, passing).filter(({ box }) =>
    where === "under"
      ? box.top === lay.courses[passing]!.top
      : box.bottom === lay.courses[passing]!.bottom,
  );
  if (heads.length === 0) return [];
  return uprightsBeside(lay, takeaway, where, beside).map((upright) =>
    heads
      .map(({ box, pieces }) => ({
        twiceApart: Math.abs(box.left + box.right - upright),
        pieces,
      }))
      .reduce((best, gap) => (gap.twiceApart < best.twiceApart ? gap : best)),
  );
}

/** The place in `courses` of the course that passes, when the opening's sill or head lies on its bed joint. */
function passingCourse(
  { courses }: SolvedLay,
  { box }: Takeaway,
  where: PassingWhere,
): number | null {
  const at =
    where === "under"
      ? courses.filter((course) => course.top <= box.bottom).length - 1
      : courses.findIndex((course) => course.bottom >= box.top);
  const beside = courses[where === "under" ? at + 1 : at - 1];
  if (at < 0 || !beside) return null;
  const onBed = where === "under" ? beside.bottom >= box.bottom : beside.top <= box.top;
  return onBed ? at : null;
}

/** Twice the middles of the upright joints along the opening that reach the passing course's bed joint. */
function uprightsBeside(
  { courses, joint, pieces }: SolvedLay,
  { box, opening }: Takeaway,
  where: PassingWhere,
  beside: number,
): Nm[] {
  const { bottom, top } = courses[beside]!;
  const width = opening.frame ? joint : (opening.movement ?? 0);
  const uprights: Nm[] = [];
  const b = pieces.bounds;
  for (let i = pieces.courseStart[beside]!; i < pieces.courseStart[beside + 1]!; i++) {
    const reaches = where === "under" ? b[4 * i + 1] === bottom : b[4 * i + 3] === top;
    if (!reaches) continue;
    const [from, to] = [b[4 * i]!, b[4 * i + 2]!];
    // A piece that the opening notches reaches past its side.
    if (from < box.left && box.left <= to) uprights.push(2 * box.left + width);
    if (from <= box.right && box.right < to) uprights.push(2 * box.right - width);
  }
  return uprights;
}
