import type { Nm } from "../../measure/index.js";
import {
  type Box,
  courseBottom,
  pieceBounds,
  type SolvedLay,
  tileLeftOf,
} from "../../solver/index.js";

/** Where a tile stands on its wall: its lower left corner. */
export interface TileFrame {
  readonly left: Nm;
  readonly bottom: Nm;
}

/** The tile that a piece of a lay is cut from. */
export function tileFrame({ lattice, pieces }: SolvedLay, i: number): TileFrame {
  const course = pieces.course[i]!;
  return {
    left: tileLeftOf(lattice, course, pieces.bounds[4 * i]!),
    bottom: courseBottom(lattice, course),
  };
}

/** A box on the wall as it lies in a tile's face. */
export function withinTile(box: Box, frame: TileFrame): Box {
  return {
    left: box.left - frame.left,
    bottom: box.bottom - frame.bottom,
    right: box.right - frame.left,
    top: box.top - frame.bottom,
  };
}

/** The bounds of a piece within its tile's face. */
export function boundsWithinTile(lay: SolvedLay, i: number): Box {
  return withinTile(pieceBounds(lay.pieces, i), tileFrame(lay, i));
}
