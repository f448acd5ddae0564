import type { Side } from "../model/index.js";
import type { Box } from "./box.js";
import { type Chain, rangeBetween } from "./chain.js";
import { subtract } from "./clip/subtract.js";
import type { TilePart } from "./cut-tile.js";
import type { Visible } from "./piece-table.js";
import { type Ring, ringOf } from "./shape.js";
import { beyond, slopeOf } from "./slope.js";
import type { Region } from "./solved.js";

/** What is seen of a part where other walls' tile covers it, or null when all of it is. */
export function visibleOf(part: TilePart, region: Region): Visible | null {
  const { left: l, bottom: b, right: r, top: t } = part.bounds;
  const { hiddenLeft, hiddenRight, hiddenBottom, hiddenTop } = region;
  const level = (at: number) => ({ low: at, high: at });
  const left = hiddenLeft ? rangeBetween(hiddenLeft, b, t) : level(l);
  const right = hiddenRight ? rangeBetween(hiddenRight, b, t) : level(r);
  const bottom = hiddenBottom ? rangeBetween(hiddenBottom, l, r) : level(b);
  const top = hiddenTop ? rangeBetween(hiddenTop, l, r) : level(t);
  if (left.high <= l && right.low >= r && bottom.high <= b && top.low >= t) return null;
  if (!part.shape && [left, right, bottom, top].every(({ low, high }) => low === high)) {
    return seenOfBox({
      left: Math.max(l, left.low),
      bottom: Math.max(b, bottom.low),
      right: Math.min(r, right.low),
      top: Math.min(t, top.low),
    });
  }
  const shape = part.shape ?? { outline: ringOf(part.bounds), holes: [] };
  const covers: Ring[] = [];
  const cover = (side: Side, chain: Chain): void => {
    covers.push(beyond(part.bounds, slopeOf(side, chain, part.bounds)));
  };
  if (hiddenLeft && left.high > l) cover("left", hiddenLeft);
  if (hiddenRight && right.low < r) cover("right", hiddenRight);
  if (hiddenBottom && bottom.high > b) cover("bottom", hiddenBottom);
  if (hiddenTop && top.low < t) cover("top", hiddenTop);
  return { shapes: subtract(shape, covers) };
}

function seenOfBox(box: Box): Visible {
  return {
    shapes:
      box.left < box.right && box.bottom < box.top ? [{ outline: ringOf(box), holes: [] }] : [],
  };
}
