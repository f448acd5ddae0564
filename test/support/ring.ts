import { doubleArea, type Ring, type Shape } from "../../src/solver/index.js";

export type Corner = readonly [x: number, y: number];

export function cornersOf(ring: Ring): Corner[] {
  const corners: Corner[] = [];
  for (let i = 0; i < ring.length; i += 2) corners.push([ring[i]!, ring[i + 1]!]);
  return corners;
}

/** The same ring, begun at its lowest, then leftmost corner. */
export function fromLowest(ring: Ring): Ring {
  let start = 0;
  for (let i = 2; i < ring.length; i += 2) {
    const [x, y] = [ring[i]!, ring[i + 1]!];
    if (y < ring[start + 1]! || (y === ring[start + 1] && x < ring[start]!)) start = i;
  }
  return [...ring.slice(start), ...ring.slice(0, start)];
}

/** The same corners the other way round. */
export function turnedRound(ring: Ring): Ring {
  return cornersOf(ring).reverse().flat();
}

/** The ring anticlockwise (1) or clockwise (-1). */
export function directed(ring: Ring, direction: 1 | -1): Ring {
  return doubleArea(ring) > 0n === (direction === 1) ? ring : turnedRound(ring);
}

/** Whether every side is upright or level. */
export function isRectilinear(ring: Ring): boolean {
  const corners = cornersOf(ring);
  return corners.every(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length]!;
    return x === nextX || y === nextY;
  });
}

/** The sum of the sides' extents across and up, in nm. */
export function perimeter(shape: Shape): number {
  let sum = 0;
  for (const ring of [shape.outline, ...shape.holes]) {
    const corners = cornersOf(ring);
    corners.forEach(([x, y], i) => {
      const [nextX, nextY] = corners[(i + 1) % corners.length]!;
      sum += Math.abs(nextX - x) + Math.abs(nextY - y);
    });
  }
  return sum;
}

export function cornerCount(shape: Shape): number {
  return [shape.outline, ...shape.holes].reduce((sum, ring) => sum + ring.length / 2, 0);
}
