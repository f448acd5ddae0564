import type { Nm } from "../measure/index.js";
import { pieceBounds, rangeBetween, type SolvedLay, visibleExtent } from "../solver/index.js";
import type { EndSide } from "./corner.js";
import { tileOf } from "./tile-of.js";

/** The piece with which a course ends at a side. */
export interface ShownEnd {
  readonly piece: number;
  /** What is seen of it across, at its narrow end. */
  readonly shown: Nm;
  /** How wide it is cut. */
  readonly cut: Nm;
}

/**
 * The last piece that is seen of a course (by its place in `courses`) at a side of the wall; null
 * where none reaches the side, or where the piece is cut at its inner end as well.
 */
export function shownEnd(lay: SolvedLay, at: number, side: EndSide): ShownEnd | null {
  const { pieces, lattice, region } = lay;
  const [first, last] = [pieces.courseStart[at]!, pieces.courseStart[at + 1]! - 1];
  const step = side === "left" ? 1 : -1;
  for (let i = side === "left" ? first : last; i >= first && i <= last; i += step) {
    const box = pieceBounds(pieces, i);
    const seen = visibleExtent(region, box);
    if (!seen) continue;
    const tile = tileOf(lay, i);
    const line =
      side === "left" ? (region.hiddenLeft ?? region.left) : (region.hiddenRight ?? region.right);
    const { low, high } = rangeBetween(line, box.bottom, box.top);
    // Where what is seen ends in a joint, the piece behind that joint is the end.
    const reaches =
      side === "left" ? box.left - lattice.joint <= high : box.right + lattice.joint >= low;
    const isWholeInside = side === "left" ? box.right === tile.right : box.left === tile.left;
    if (!reaches || !isWholeInside) return null;
    return { piece: i, shown: seen.width, cut: box.right - box.left };
  }
  return null;
}
