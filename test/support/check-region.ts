import assert from "node:assert/strict";
import {
  boundsOf,
  doubleShapeArea,
  overlaps,
  type Box,
  type Shape,
} from "../../src/solver/index.js";
import { roundingBound } from "./check-shape.js";
import { holeRing } from "./circle.js";
import { boxRing, intersect, ringsOf } from "./clipping.js";
import { beyond, isSquare, type ReferenceWall, type SideLine } from "./reference-wall.js";
import { isRectilinear } from "./ring.js";

/**
 * A piece keeps clear of everything that is not tiled. What it shares with the outside is nothing
 * where sides are straight and square, and rounding (see `roundingBound`) along slopes and arcs.
 */
export function checkInRegion(name: string, shape: Shape, reference: ReferenceWall): void {
  const bounds = boundsOf(shape.outline);
  for (const line of reference.sides) {
    if (isClearOf(bounds, line)) continue;
    const area = sharedArea(shape, beyond(line));
    const bound = isSquare(line) ? 0 : roundingBound(shape);
    assert.ok(area <= bound, `${name} stays inside the ${line.side} side: ${area} over ${bound}`);
  }
  for (const box of reference.openings) {
    if (!overlaps(bounds, box)) continue;
    const area = sharedArea(shape, boxRing(box));
    const bound = isRectilinear(shape.outline) ? 0 : roundingBound(shape);
    assert.ok(area <= bound, `${name} stays clear of the openings: ${area} over ${bound}`);
  }
  for (const circle of reference.circles) {
    const ring = holeRing(circle);
    if (!overlaps(bounds, boundsOf(ring))) continue;
    const area = sharedArea(shape, ring);
    const bound = 2 * roundingBound(shape);
    assert.ok(area <= bound, `${name} stays clear of the holes: ${area} over ${bound}`);
  }
}

/** Whether the whole of the side lies outside the bounds, so that it can't cut into them. */
export function isClearOf({ left, bottom, right, top }: Box, { side, points }: SideLine): boolean {
  const values = points.map(([, value]) => value);
  if (side === "left") return left >= Math.max(...values);
  if (side === "right") return right <= Math.min(...values);
  return side === "bottom" ? bottom >= Math.max(...values) : top <= Math.min(...values);
}

function sharedArea(shape: Shape, ring: readonly number[]): number {
  return intersect(ringsOf(shape), [ring]).reduce(
    (sum, part) => sum + Number(doubleShapeArea(part)) / 2,
    0,
  );
}
