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
  // What numbers hold is added up as one; what is larger, in whole numbers.
  let small = 0;
  // Seen from the first corner, so that its own two edges span nothing.
  const x = ring[0]!;
  const y = ring[1]!;
  for (let i = 2; i + 2 < ring.length; i += 2) {
    const ax = ring[i]! - x;
    const ay = ring[i + 1]! - y;
    const bx = ring[i + 2]! - x;
    const by = ring[i + 3]! - y;
    const l = ax * by;
    const r = bx * ay;
    const more = small + (l - r);
    if (isExact(l) && isExact(r) && isExact(l - r) && isExact(more)) small = more;
    else sum += BigInt(ax) * BigInt(by) - BigInt(bx) * BigInt(ay);
  }
  return sum + BigInt(small);
}

/** Whether a number that came of whole numbers is sure to be the whole number that it stands for. */
const isExact = Number.isSafeInteger;

/** The same of a ring of four corners, as most are: of what is between its diagonals. */
function doubleAreaOfFour(ring: Ring): bigint {
  const ax = ring[4]! - ring[0]!;
  const ay = ring[5]! - ring[1]!;
  const bx = ring[6]! - ring[2]!;
  const by = ring[7]! - ring[3]!;
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
