import type { Nm } from "../measure/index.js";
import type { Side } from "../model/index.js";
import { grown, type Box } from "./box.js";
import { type Chain, rangeBetween } from "./chain.js";
import { subtract } from "./clip/subtract.js";
import type { TilePart } from "./cut-tile.js";
import type { Visible } from "./piece-table.js";
import { ringOf } from "./shape.js";
import { beyond, slopeOf } from "./slope.js";
import type { Region } from "./solved.js";

/** Other walls' tile over a side of a part: where it ends, and from where to where that is beside the part. */
interface Cover {
  readonly side: Side;
  readonly chain: Chain;
  readonly low: Nm;
  readonly high: Nm;
}

/** What is seen of a part where other walls' tile covers it, or null when all of it is. */
export function visibleOf(part: TilePart, region: Region): Visible | null {
  const covers = coversOver(part.bounds, region);
  if (covers.length === 0) return null;
  if (!part.shape && covers.every(({ low, high }) => low === high)) {
    return seenOfBox(covers.reduce((box, { side, low }) => ({ ...box, [side]: low }), part.bounds));
  }
  const shape = part.shape ?? { outline: ringOf(part.bounds), holes: [] };
  // Past the part's bounds, so that a cover's line crosses its edges and ends on none of them.
  const wide = grown(part.bounds, 1);
  const rings = covers.map(({ side, chain }) => beyond(wide, slopeOf(side, chain, wide)));
  return { shapes: subtract(shape, rings) };
}

const SIDES = ["left", "right", "bottom", "top"] as const;

function coversOver(bounds: Box, region: Region): readonly Cover[] {
  const { hiddenLeft, hiddenRight, hiddenBottom, hiddenTop } = region;
  if (!hiddenLeft && !hiddenRight && !hiddenBottom && !hiddenTop) return [];
  const { left, bottom, right, top } = bounds;
  const chains = { left: hiddenLeft, right: hiddenRight, bottom: hiddenBottom, top: hiddenTop };
  const covers: Cover[] = [];
  for (const side of SIDES) {
    const chain = chains[side];
    if (!chain) continue;
    const isUpright = side === "left" || side === "right";
    const isLow = side === "left" || side === "bottom";
    const { low, high } = isUpright
      ? rangeBetween(chain, bottom, top)
      : rangeBetween(chain, left, right);
    const isOver = isLow ? high > bounds[side] : low < bounds[side];
    if (isOver) covers.push({ side, chain, low, high });
  }
  return covers;
}

function seenOfBox(box: Box): Visible {
  return {
    shapes:
      box.left < box.right && box.bottom < box.top ? [{ outline: ringOf(box), holes: [] }] : [],
  };
}
