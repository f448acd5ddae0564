import type { Nm } from "../measure/index.js";
import type { Box } from "./box.js";
import { highestOver, lowestUnder, rangeBetween } from "./chain.js";
import type { Region } from "./solved.js";

/** The visible width and height by which a piece is judged. */
export interface Extent {
  /** Where what is seen begins, at the narrow end. */
  readonly left: Nm;
  readonly bottom: Nm;
  readonly width: Nm;
  readonly height: Nm;
}

/**
 * What is seen of a piece with these bounds, at its narrow end where a side is measured or a hidden
 * strip slopes; null when another wall's tile hides the whole piece.
 */
export function visibleExtent(region: Region, piece: Box): Extent | null {
  const { left: l, bottom: b, right: r, top: t } = piece;
  const { hiddenLeft, hiddenRight, hiddenBottom, hiddenTop } = region;
  if (hiddenLeft && r <= rangeBetween(hiddenLeft, b, t).low) return null;
  if (hiddenRight && l >= rangeBetween(hiddenRight, b, t).high) return null;
  if (hiddenBottom && t <= rangeBetween(hiddenBottom, l, r).low) return null;
  if (hiddenTop && b >= rangeBetween(hiddenTop, l, r).high) return null;
  const left = highestOver(hiddenLeft ?? region.left, l, b, t);
  const right = lowestUnder(hiddenRight ?? region.right, r, b, t);
  const bottom = highestOver(hiddenBottom ?? region.bottom, b, l, r);
  const top = lowestUnder(hiddenTop ?? region.top, t, l, r);
  return { left, bottom, width: Math.max(0, right - left), height: Math.max(0, top - bottom) };
}
