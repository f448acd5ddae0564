import type { Box } from "./box.js";
import { overlaps } from "./box.js";
import { rangeBetween } from "./chain.js";
import { lessBox, lessCircle } from "./clip/bite.js";
import { circleMeets, circleRing, ringNear } from "./clip/circle.js";
import { subtract } from "./clip/subtract.js";
import { boundsOf, ringOf, type Ring, type Shape } from "./shape.js";
import { beyond, scribed, type Sides, slopesAcross, slopeWithin } from "./slope.js";

/** What of the region's inside may meet a tile: the takeaways and round holes near it. */
export interface Obstacles {
  readonly boxes: readonly Box[];
  readonly circles: readonly Box[];
}

/** One connected part of a tile within the region; `outline` is null for a plain rectangle. */
export interface TilePart {
  readonly bounds: Box;
  readonly shape: Shape | null;
  /** Whether a round hole or a slope made its edge. */
  readonly touched: "circle" | "slope" | null;
}

/** The parts of a tile that lie in the region, lowest and leftmost first. */
export function cutTile(tile: Box, region: Sides, obstacles: Obstacles): readonly TilePart[] {
  const box = trimStraight(tile, region, obstacles.boxes);
  if (!box) return [];
  const slopes = slopesAcross(box, region);
  const boxes = obstacles.boxes.filter((obstacle) => overlaps(box, obstacle));
  const circles = obstacles.circles.filter((circle) => circleMeets(circle, box));
  if (slopes.length + boxes.length + circles.length === 0) {
    return [{ bounds: box, shape: null, touched: null }];
  }
  if (boxes.length + circles.length === 0 && slopes.length === 1) {
    const { side } = slopes[0]!;
    const outline = scribed(box, slopeWithin(side, region[side], box));
    if (outline) return [partOf({ outline, holes: [] }, "slope")];
  }
  if (slopes.length === 0 && boxes.length + circles.length === 1) {
    const [bite] = boxes;
    const shape = bite ? lessBox(box, bite) : lessCircle(box, circles[0]!);
    // A circle within the box makes a hole, and none of the outline's edge.
    if (shape) return [partOf(shape, null)];
  }
  const rings = [
    ...slopes.map((slope) => beyond(box, slope)),
    ...boxes.map((obstacle) => ringOf(clampedTo(obstacle, box))),
    ...circles.map((circle) => ringNear(circleRing(circle), box)),
  ];
  const sloped = slopes.length > 0 ? "slope" : null;
  return subtract({ outline: ringOf(box), holes: [] }, rings).map((shape) =>
    partOf(shape, circles.some((circle) => bites(circle, shape.outline)) ? "circle" : sloped),
  );
}

/**
 * Whether a round hole made a part's edge: only then are two corners of the part in a row on its rim. One alone
 * may lie within the rim, yet clear of the polygon that stands for the hole.
 */
function bites(circle: Box, ring: Ring): boolean {
  const radius = (circle.right - circle.left) / 2;
  const x = (circle.left + circle.right) / 2;
  const y = (circle.bottom + circle.top) / 2;
  // Corners on the rim are rounded, so they may lie up to a nanometre out of it.
  const isOnRim = (i: number) => Math.hypot(ring[i]! - x, ring[i + 1]! - y) <= radius + 1;
  return ring.some((_, i) => i % 2 === 0 && isOnRim(i) && isOnRim((i + 2) % ring.length));
}

function partOf(shape: Shape, touched: TilePart["touched"]): TilePart {
  const bounds = boundsOf(shape.outline);
  const plain = shape.holes.length === 0 && isBox(shape.outline);
  return plain ? { bounds, shape: null, touched: null } : { bounds, shape, touched };
}

/**
 * The tile drawn in by whatever cuts straight through it: level or upright sides, and openings that
 * span it. null when nothing is left. What remains to be cut is a slope, a notch or a hole.
 */
function trimStraight(tile: Box, region: Sides, boxes: readonly Box[]): Box | null {
  let { left, bottom, right, top } = tile;
  for (let trimmed = true; trimmed;) {
    trimmed = false;
    if (left >= right || bottom >= top) return null;
    const l = rangeBetween(region.left, bottom, top);
    const r = rangeBetween(region.right, bottom, top);
    const b = rangeBetween(region.bottom, left, right);
    const t = rangeBetween(region.top, left, right);
    if (l.low >= right || r.high <= left || b.low >= top || t.high <= bottom) return null;
    if (l.low === l.high && l.low > left) [left, trimmed] = [l.low, true];
    if (r.low === r.high && r.low < right) [right, trimmed] = [r.low, true];
    if (b.low === b.high && b.low > bottom) [bottom, trimmed] = [b.low, true];
    if (t.low === t.high && t.low < top) [top, trimmed] = [t.low, true];
    for (const box of boxes) {
      if (!overlaps({ left, bottom, right, top }, box)) continue;
      const spansUp = box.bottom <= bottom && box.top >= top;
      const spansAcross = box.left <= left && box.right >= right;
      if (spansUp && box.left <= left) [left, trimmed] = [box.right, true];
      else if (spansUp && box.right >= right) [right, trimmed] = [box.left, true];
      else if (spansAcross && box.bottom <= bottom) [bottom, trimmed] = [box.top, true];
      else if (spansAcross && box.top >= top) [top, trimmed] = [box.bottom, true];
      if (left >= right || bottom >= top) return null;
    }
  }
  return { left, bottom, right, top };
}

/** The obstacle as far as it reaches into the box, and one nanometre past it. */
function clampedTo(obstacle: Box, box: Box): Box {
  return {
    left: Math.max(obstacle.left, box.left - 1),
    bottom: Math.max(obstacle.bottom, box.bottom - 1),
    right: Math.min(obstacle.right, box.right + 1),
    top: Math.min(obstacle.top, box.top + 1),
  };
}

function isBox(ring: Ring): boolean {
  return (
    ring.length === 8 &&
    ring[1] === ring[3] &&
    ring[2] === ring[4] &&
    ring[5] === ring[7] &&
    ring[6] === ring[0]
  );
}
