import type { Box } from "./box.js";

/**
 * A closed ring of corners, x and y in turn, in nanometres. Outlines run anticlockwise from their
 * lowest, then leftmost corner, with no point on a straight run; holes run clockwise from theirs.
 */
export type Ring = readonly number[];

/** A connected piece's shape: its outline and the holes in it. */
export interface Shape {
  readonly outline: Ring;
  readonly holes: readonly Ring[];
}

/** The outline of a box. */
export function ringOf(box: Box): Ring {
  return [box.left, box.bottom, box.right, box.bottom, box.right, box.top, box.left, box.top];
}

/** Twice the signed area of a ring in square nanometres, exact; positive when anticlockwise. */
export function doubleArea(ring: Ring): bigint {
  if (ring.length === 8) return doubleAreaOfFour(ring);
  let sum = 0n;
  // Seen from the first corner, so that its own two edges span nothing.
  const [x, y] = [ring[0]!, ring[1]!];
  for (let i = 2; i + 2 < ring.length; i += 2) {
    const [ax, ay] = [BigInt(ring[i]! - x), BigInt(ring[i + 1]! - y)];
    const [bx, by] = [BigInt(ring[i + 2]! - x), BigInt(ring[i + 3]! - y)];
    sum += ax * by - bx * ay;
  }
  return sum;
}

/** The same of a ring of four corners, as most are: of what is between its diagonals. */
function doubleAreaOfFour(ring: Ring): bigint {
  const [ax, ay] = [ring[4]! - ring[0]!, ring[5]! - ring[1]!];
  const [bx, by] = [ring[6]! - ring[2]!, ring[7]! - ring[3]!];
  return BigInt(ax) * BigInt(by) - BigInt(bx) * BigInt(ay);
}

/** Twice the area of a shape in square nanometres, exact. */
export function doubleShapeArea(shape: Shape): bigint {
  return shape.holes.reduce((sum, hole) => sum + doubleArea(hole), doubleArea(shape.outline));
}

/** The smallest box round a ring. */
export function boundsOf(ring: Ring): Box {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (let i = 0; i < ring.length; i += 2) {
    left = Math.min(left, ring[i]!);
    right = Math.max(right, ring[i]!);
    bottom = Math.min(bottom, ring[i + 1]!);
    top = Math.max(top, ring[i + 1]!);
  }
  return { left, bottom, right, top };
}
