import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import type { Ring } from "../shape.js";

type Point = readonly [x: number, y: number];

/** From where to where something reaches across (0) or up (1). */
export interface SharedReach {
  readonly from: Nm;
  readonly to: Nm;
}

/** What a convex ring and a box have in common, as far as it reaches across (0) or up (1), rounded outwards; null for nothing. */
export function sharedReach(ring: Ring, box: Box, axis: 0 | 1): SharedReach | null {
  const points: Point[] = ring.flatMap((x, i) => (i % 2 === 0 ? [[x, ring[i + 1]!] as const] : []));
  const within = [
    [0, box.left, 1],
    [0, box.right, -1],
    [1, box.bottom, 1],
    [1, box.top, -1],
  ] as const;
  const shared = within.reduce<readonly Point[]>(
    (left, [along, at, sign]) => keptBeyond(left, along, at, sign),
    points,
  );
  const places = shared.map((point) => point[axis]);
  const [from, to] = [Math.floor(Math.min(...places)), Math.ceil(Math.max(...places))];
  return shared.length > 2 && from < to ? { from, to } : null;
}

/** What of a convex ring lies past a line across or up: on its far side (1), or on its near side (-1). */
function keptBeyond(points: readonly Point[], along: 0 | 1, at: Nm, sign: 1 | -1): Point[] {
  const past = (point: Point): number => sign * (point[along] - at);
  return points.flatMap((point, i) => {
    const next = points[(i + 1) % points.length]!;
    const [here, there] = [past(point), past(next)];
    const kept = here >= 0 ? [point] : [];
    if (here * there >= 0) return kept;
    const share = here / (here - there);
    const crossing: Point = [
      point[0] + share * (next[0] - point[0]),
      point[1] + share * (next[1] - point[1]),
    ];
    return [...kept, crossing];
  });
}
