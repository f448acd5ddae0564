import type { Nm } from "../measure/index.js";
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
  let box = tile;
  for (;;) {
    const within = drawnToSides(box, region);
    if (!within) return null;
    const trimmed = boxes.length === 0 ? within : besideBoxes(within, boxes);
    if (!trimmed || trimmed === box) return trimmed;
    // Drawn in, it may end along a level part of a side, or be spanned where it wasn't before.
    box = trimmed;
  }
}

/** A box drawn in to the sides that run level or upright beside it; null where it lies past one. */
function drawnToSides(box: Box, region: Sides): Box | null {
  const l = rangeBetween(region.left, box.bottom, box.top);
  const r = rangeBetween(region.right, box.bottom, box.top);
  const b = rangeBetween(region.bottom, box.left, box.right);
  const t = rangeBetween(region.top, box.left, box.right);
  if (l.low >= box.right || r.high <= box.left || b.low >= box.top || t.high <= box.bottom) {
    return null;
  }
  const left = l.low === l.high ? Math.max(box.left, l.low) : box.left;
  const right = r.low === r.high ? Math.min(box.right, r.low) : box.right;
  const bottom = b.low === b.high ? Math.max(box.bottom, b.low) : box.bottom;
  const top = t.low === t.high ? Math.min(box.top, t.low) : box.top;
  return drawnTo(box, left, bottom, right, top);
}

/** A box drawn in past the openings that span it; null where they leave nothing. */
function besideBoxes(from: Box, boxes: readonly Box[]): Box | null {
  let { left, bottom, right, top } = from;
  for (const box of boxes) {
    if (box.left >= right || box.right <= left || box.bottom >= top || box.top <= bottom) continue;
    const spansUp = box.bottom <= bottom && box.top >= top;
    const spansAcross = box.left <= left && box.right >= right;
    if (spansUp && box.left <= left) left = box.right;
    else if (spansUp && box.right >= right) right = box.left;
    else if (spansAcross && box.bottom <= bottom) bottom = box.top;
    else if (spansAcross && box.top >= top) top = box.bottom;
    if (left >= right || bottom >= top) return null;
  }
  return drawnTo(from, left, bottom, right, top);
}

/** The box with these sides, itself where they are its own; null where they leave nothing. */
function drawnTo(box: Box, left: Nm, bottom: Nm, right: Nm, top: Nm): Box | null {
  if (left >= right || bottom >= top) return null;
  const isSame =
    left === box.left && bottom === box.bottom && right === box.right && top === box.top;
  return isSame ? box : { left, bottom, right, top };
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
