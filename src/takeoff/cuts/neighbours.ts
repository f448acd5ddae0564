import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { courseBottom, moduleAcross, type SolvedLay, tileLeftOf } from "../../solver/index.js";
import type { Stretch } from "./stretch.js";

/**
 * Whether another tile faces a stretch of a piece's side across a field joint. `stretch` has to lie on
 * the edge of the piece's own tile.
 */
export function meetsTile(lay: SolvedLay, i: number, side: Side, stretch: Stretch): boolean {
  return side === "left" || side === "right"
    ? meetsBeside(lay, i, side, stretch)
    : meetsOver(lay, i, side, stretch);
}

function meetsBeside(
  { lattice, pieces }: SolvedLay,
  i: number,
  side: "left" | "right",
  { from, to }: Stretch,
): boolean {
  const { bounds, column, course } = pieces;
  const step = side === "right" ? 1 : -1;
  const facing =
    side === "right" ? bounds[4 * i + 2]! + lattice.joint : bounds[4 * i]! - lattice.joint;
  for (let j = i + step; j >= 0 && j < pieces.count && course[j] === course[i]; j += step) {
    const away = Math.abs(column[j]! - column[i]!);
    if (away > 1) return false;
    if (away === 0) continue;
    const near = side === "right" ? bounds[4 * j]! : bounds[4 * j + 2]!;
    if (near === facing && bounds[4 * j + 1]! < to && bounds[4 * j + 3]! > from) return true;
  }
  return false;
}

function meetsOver(
  lay: SolvedLay,
  i: number,
  side: "bottom" | "top",
  { from, to }: Stretch,
): boolean {
  const { lattice, pieces } = lay;
  const { bounds, courseStart } = pieces;
  const other = pieces.course[i]! + (side === "top" ? 1 : -1);
  if (other < 1 || other >= courseStart.length) return false;
  const bottom = courseBottom(lattice, other);
  const facing = side === "top" ? bottom : bottom + lattice.face.up;
  const end = courseStart[other]!;
  for (let j = firstReaching(lay, other, from); j < end && bounds[4 * j]! < to; j++) {
    const near = side === "top" ? bounds[4 * j + 1]! : bounds[4 * j + 3]!;
    if (near === facing && bounds[4 * j + 2]! > from) return true;
  }
  return false;
}

/** The first piece of a course whose tile reaches past a place. */
function firstReaching({ lattice, pieces }: SolvedLay, course: number, place: Nm): number {
  const lastShort = tileLeftOf(lattice, course, place - lattice.face.across);
  const from = lastShort + moduleAcross(lattice);
  let low = pieces.courseStart[course - 1]!;
  let high = pieces.courseStart[course]!;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (pieces.bounds[4 * middle]! >= from) high = middle;
    else low = middle + 1;
  }
  return low;
}
