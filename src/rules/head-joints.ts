import { type Box, pieceBounds, type SolvedLay } from "../solver/index.js";

/** A joint between two neighbours in a course, and the pieces on both sides of it. */
export interface HeadJoint {
  readonly box: Box;
  readonly pieces: readonly [number, number];
}

/** The head joints of a course (by its place in `courses`), left to right. */
export function headJointsOf({ lattice, pieces }: SolvedLay, course: number): HeadJoint[] {
  const joints: HeadJoint[] = [];
  const end = pieces.courseStart[course + 1] ?? 0;
  for (let i = pieces.courseStart[course] ?? 0; i < end; i++) {
    const a = pieceBounds(pieces, i);
    for (let j = i + 1; j < end && pieces.column[j]! <= pieces.column[i]! + 1; j++) {
      const b = pieceBounds(pieces, j);
      const bottom = Math.max(a.bottom, b.bottom);
      const top = Math.min(a.top, b.top);
      if (b.left - a.right !== lattice.joint || bottom >= top) continue;
      joints.push({ box: { left: a.right, bottom, right: b.left, top }, pieces: [i, j] });
    }
  }
  return joints;
}
