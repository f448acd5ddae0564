import {
  type Box,
  courseBottom,
  pieceBounds,
  type SolvedLay,
  tileLeftOf,
} from "../solver/index.js";

/** The whole tile that a piece is cut from, where it lies on the lattice. */
export function tileOf({ lattice, pieces }: SolvedLay, i: number): Box {
  const course = pieces.course[i]!;
  const left = tileLeftOf(lattice, course, pieceBounds(pieces, i).left);
  const bottom = courseBottom(lattice, course);
  return { left, bottom, right: left + lattice.face.across, top: bottom + lattice.face.up };
}
