import type { Box } from "../../src/solver/index.js";

/** What of a box lies in a zone. */
export function within(box: Box, zone: Box): Box {
  return {
    left: Math.max(box.left, zone.left),
    bottom: Math.max(box.bottom, zone.bottom),
    right: Math.min(box.right, zone.right),
    top: Math.min(box.top, zone.top),
  };
}

/** The area of a box less that of others, which may overlap: summed over the grid of their edges. */
export function areaWithout(box: Box, others: readonly Box[]): bigint {
  if (box.left >= box.right || box.bottom >= box.top) return 0n;
  const inside = others.map((other) => within(other, box));
  const xs = sortedEdges(
    [box, ...inside].flatMap(({ left, right }) => [left, right]),
    box.left,
    box.right,
  );
  const ys = sortedEdges(
    [box, ...inside].flatMap(({ bottom, top }) => [bottom, top]),
    box.bottom,
    box.top,
  );
  let sum = 0n;
  for (let i = 1; i < xs.length; i++) {
    for (let j = 1; j < ys.length; j++) {
      const [left, right, bottom, top] = [xs[i - 1]!, xs[i]!, ys[j - 1]!, ys[j]!];
      const isTaken = inside.some(
        (o) => o.left <= left && o.right >= right && o.bottom <= bottom && o.top >= top,
      );
      if (!isTaken) sum += BigInt(right - left) * BigInt(top - bottom);
    }
  }
  return sum;
}

function sortedEdges(edges: readonly number[], from: number, to: number): number[] {
  const kept = edges.filter((edge) => edge >= from && edge <= to);
  return [...new Set(kept)].sort((a, b) => a - b);
}
