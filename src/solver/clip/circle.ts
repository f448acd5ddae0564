import { divideRounded } from "../../measure/index.js";
import type { Box } from "../box.js";
import type { Ring } from "../shape.js";

/** Corners of the polygon that stands for a round hole; its area is 0.07 % under the circle's. */
const CORNERS = 96;

const RINGS = new WeakMap<Box, Ring>();

/**
 * A circle that fills a box of whole radius, as an anticlockwise polygon inscribed in it, symmetric both ways. It is worked
 * out once for a box, since a hole meets several tiles.
 */
export function circleRing(box: Box): Ring {
  const known = RINGS.get(box);
  if (known) return known;
  const ring = newRing(box);
  RINGS.set(box, ring);
  return ring;
}

function newRing(box: Box): Ring {
  const quarter = CORNERS / 4;
  const radius = (box.right - box.left) / 2;
  const cx = (box.left + box.right) / 2;
  const cy = (box.bottom + box.top) / 2;
  const reach: number[] = [];
  for (let i = 0; i <= quarter; i++) {
    reach.push(divideRounded(radius * Math.sin((Math.PI / 2) * (i / quarter)), 1));
  }
  const ring: number[] = [];
  for (let i = 0; i < quarter; i++) ring.push(cx + reach[quarter - i]!, cy + reach[i]!);
  for (let i = 0; i < quarter; i++) ring.push(cx - reach[i]!, cy + reach[quarter - i]!);
  for (let i = 0; i < quarter; i++) ring.push(cx - reach[quarter - i]!, cy - reach[i]!);
  for (let i = 0; i < quarter; i++) ring.push(cx + reach[i]!, cy - reach[quarter - i]!);
  return ring;
}

/** Whether a circle that fills a box shares more than a point with another box; exact. */
export function circleMeets(circle: Box, box: Box): boolean {
  const gap = (low: number, high: number, middle2: number) =>
    Math.max(2 * low - middle2, middle2 - 2 * high, 0);
  const dx = BigInt(gap(box.left, box.right, circle.left + circle.right));
  const dy = BigInt(gap(box.bottom, box.top, circle.bottom + circle.top));
  const diameter = BigInt(circle.right - circle.left);
  return dx * dx + dy * dy < diameter * diameter;
}

/**
 * A convex ring that takes the same from a box with fewer corners: one is left out where the
 * triangle that it makes with its neighbours stays clear of the box.
 */
export function ringNear(ring: Ring, box: Box): Ring {
  const near: number[] = [ring[0]!, ring[1]!];
  for (let i = 2; i + 3 < ring.length; i += 2) {
    const last = near.length - 2;
    const isNear =
      reachInto(near[last]!, ring[i]!, ring[i + 2]!, box.left, box.right) &&
      reachInto(near[last + 1]!, ring[i + 1]!, ring[i + 3]!, box.bottom, box.top);
    if (isNear) near.push(ring[i]!, ring[i + 1]!);
  }
  near.push(ring.at(-2)!, ring.at(-1)!);
  return near;
}

/** Whether what goes from the least of three places to the greatest touches a stretch. */
function reachInto(a: number, b: number, c: number, from: number, to: number): boolean {
  return Math.min(a, b, c) <= to && from <= Math.max(a, b, c);
}
