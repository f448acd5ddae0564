import { cutOf, type PieceTable, type Ring } from "../solver/index.js";

/**
 * Whether two pieces are cut alike: both whole, or of one size and shape, wherever they stand. Which
 * of its tile's edges a piece keeps doesn't count.
 */
export function sameCut(a: PieceTable, i: number, b: PieceTable, j: number): boolean {
  const whole = cutOf(a, i) === "none";
  if (whole || cutOf(b, j) === "none") return whole && cutOf(b, j) === "none";
  const [x, y] = [a.bounds, b.bounds];
  for (let k = 0; k < 2; k++) {
    const mine = x[4 * i + k + 2]! - x[4 * i + k]!;
    if (mine !== y[4 * j + k + 2]! - y[4 * j + k]!) return false;
  }
  const [one, other] = [a.shapes.get(i), b.shapes.get(j)];
  if (!one || !other) return !one && !other;
  const dx = y[4 * j]! - x[4 * i]!;
  const dy = y[4 * j + 1]! - x[4 * i + 1]!;
  return (
    sameRing(one.outline, other.outline, dx, dy) &&
    one.holes.length === other.holes.length &&
    one.holes.every((hole, n) => sameRing(hole, other.holes[n]!, dx, dy))
  );
}

function sameRing(one: Ring, other: Ring, dx: number, dy: number): boolean {
  if (one.length !== other.length) return false;
  return one.every((value, k) => value + (k % 2 === 0 ? dx : dy) === other[k]);
}
