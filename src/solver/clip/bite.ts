import type { Box } from "../box.js";
import { ringOf, type Ring, type Shape } from "../shape.js";
import { circleRing } from "./circle.js";
import { fromLowest, tidyRing } from "./ring.js";

/**
 * What is left of a box when an upright rectangle that overlaps it is taken away: an L, a U, or the box
 * with a hole. Most notches are so, and need no graph of edges. Null where more than one part, or nothing,
 * is left. The same shape, corner for corner, as `subtract` makes.
 */
export function lessBox(box: Box, bite: Box): Shape | null {
  const { left, bottom, right, top } = box;
  const l = bite.left <= left;
  const b = bite.bottom <= bottom;
  const r = bite.right >= right;
  const t = bite.top >= top;
  if ((l && r) || (b && t)) return null;
  if (!l && !b && !r && !t) return withHole(box, ringOf(bite));
  // Each corner, whole or bitten off, and after it its side, where that is bitten into.
  const outline = [
    ...(l && b ? [left, bite.top, bite.right, bite.top, bite.right, bottom] : [left, bottom]),
    ...(b && !l && !r
      ? [bite.left, bottom, bite.left, bite.top, bite.right, bite.top, bite.right, bottom]
      : []),
    ...(b && r ? [bite.left, bottom, bite.left, bite.top, right, bite.top] : [right, bottom]),
    ...(r && !b && !t
      ? [right, bite.bottom, bite.left, bite.bottom, bite.left, bite.top, right, bite.top]
      : []),
    ...(r && t ? [right, bite.bottom, bite.left, bite.bottom, bite.left, top] : [right, top]),
    ...(t && !r && !l
      ? [bite.right, top, bite.right, bite.bottom, bite.left, bite.bottom, bite.left, top]
      : []),
    ...(t && l ? [bite.right, top, bite.right, bite.bottom, left, bite.bottom] : [left, top]),
    ...(l && !t && !b
      ? [left, bite.top, bite.right, bite.top, bite.right, bite.bottom, left, bite.bottom]
      : []),
  ];
  return { outline: fromLowest(outline), holes: [] };
}

/** What is left of a box round a circle that lies within it; null where the circle meets its edge. */
export function lessCircle(box: Box, circle: Box): Shape | null {
  const within =
    circle.left > box.left &&
    circle.bottom > box.bottom &&
    circle.right < box.right &&
    circle.top < box.top;
  return within ? withHole(box, circleRing(circle)) : null;
}

function withHole(box: Box, ring: Ring): Shape | null {
  const hole = tidyRing(reversed(ring));
  return hole && { outline: ringOf(box), holes: [hole] };
}

/** The ring the other way round. */
function reversed(ring: Ring): Ring {
  return ring.map((_, i) => ring[ring.length - 2 - i + 2 * (i % 2)]!);
}
