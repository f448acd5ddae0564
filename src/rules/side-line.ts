import type { Nm } from "../measure/index.js";
import type { Side } from "../model/index.js";
import { type Box, type Chain, highestOver, lowestUnder, rangeBetween } from "../solver/index.js";

export const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** How a measured side runs along a box: how deep it cuts in at most and at least, counted inward. */
export interface SideLine {
  /** How far the side lies inside the box's own side, at its deepest; negative when it is clear of it. */
  readonly deepest: Nm;
  readonly shallowest: Nm;
}

/** Whether a side of the region cuts into a box from the same side of it. */
export function cutsInto(chain: Chain, box: Box, side: Side): boolean {
  const upright = side === "left" || side === "right";
  const from = upright ? box.bottom : box.left;
  const to = upright ? box.top : box.right;
  return side === "left" || side === "bottom"
    ? highestOver(chain, box[side], from, to) > box[side]
    : lowestUnder(chain, box[side], from, to) < box[side];
}

/** How deep a side of the region lies inside the same side of `box`, along the stretch of `along`. */
export function sideInside(chain: Chain, box: Box, side: Side, along: Box): SideLine {
  const upright = side === "left" || side === "right";
  const { low, high } = upright
    ? rangeBetween(chain, along.bottom, along.top)
    : rangeBetween(chain, along.left, along.right);
  return side === "left" || side === "bottom"
    ? { deepest: high - box[side], shallowest: low - box[side] }
    : { deepest: box[side] - low, shallowest: box[side] - high };
}
