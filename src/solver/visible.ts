import type { Box } from "./box.js";
import { rangeBetween } from "./chain.js";
import { subtract } from "./clip/subtract.js";
import type { TilePart } from "./cut-tile.js";
import type { Visible } from "./piece-table.js";
import { ringOf } from "./shape.js";
import { beyond, slopeOf } from "./slope.js";
import type { Region } from "./solved.js";

/** What is seen of a part where other walls' tile covers it, or null when all of it is. */
export function visibleOf(part: TilePart, region: Region): Visible | null {
  const { left: l, bottom: b, right: r, top: t } = part.bounds;
  const { hiddenLeft, hiddenRight } = region;
  const to = hiddenLeft ? rangeBetween(hiddenLeft, b, t) : { low: l, high: l };
  const from = hiddenRight ? rangeBetween(hiddenRight, b, t) : { low: r, high: r };
  if (to.high <= l && from.low >= r) return null;
  if (!part.shape && to.low === to.high && from.low === from.high) {
    return seenOfBox({
      left: Math.max(l, to.low),
      bottom: b,
      right: Math.min(r, from.low),
      top: t,
    });
  }
  const shape = part.shape ?? { outline: ringOf(part.bounds), holes: [] };
  const covers = [];
  if (hiddenLeft && to.high > l)
    covers.push(beyond(part.bounds, slopeOf("left", hiddenLeft, part.bounds)));
  if (hiddenRight && from.low < r)
    covers.push(beyond(part.bounds, slopeOf("right", hiddenRight, part.bounds)));
  return { shapes: subtract(shape, covers) };
}

function seenOfBox(box: Box): Visible {
  return { shapes: box.left < box.right ? [{ outline: ringOf(box), holes: [] }] : [] };
}
