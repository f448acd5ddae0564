import type { Ring } from "../shape.js";
import { areClear, crossingOf, type Segment, segmentsOf, sideOf } from "./segment.js";

/** Where the ring that is cut crosses what is taken away. */
interface Crossing {
  readonly x: number;
  readonly y: number;
  /** The edges that cross, by their numbers along their rings. */
  readonly cut: number;
  readonly taken: number;
  /** Whether the ring runs into what is taken away there, or out of it. */
  readonly enters: boolean;
}

/**
 * What is left of a ring when another one is taken away that bites into it once: where both cross at two places, and meet
 * nowhere else. Most mitres, round holes at a tile's edge and covered ends are so, and need no graph of edges. Null for any
 * other. Both run anticlockwise, and through no place twice. The same ring as the graph has, before it is tidied.
 */
export function cutOff(ring: Ring, taken: Ring): Ring | null {
  const crossings = crossingsOf(ring, taken);
  const enter = crossings?.find(({ enters }) => enters);
  const leave = crossings?.find(({ enters }) => !enters);
  if (!enter || !leave) return null;
  return [
    leave.x,
    leave.y,
    ...cornersBetween(ring, leave, enter, "cut"),
    enter.x,
    enter.y,
    ...backwards(cornersBetween(taken, leave, enter, "taken")),
  ];
}

/** The two places at which rings cross; null where there are others, or one that is a corner, as it is or rounded. */
function crossingsOf(ring: Ring, taken: Ring): readonly Crossing[] | null {
  const edges = segmentsOf(ring);
  const others = segmentsOf(taken);
  const found: Crossing[] = [];
  for (let i = 0; i < edges.length; i++) {
    const s = edges[i]!;
    for (let j = 0; j < others.length; j++) {
      const t = others[j]!;
      if (areClear(s, t)) continue;
      const ends = sideOf(s, t.ax, t.ay) * sideOf(s, t.bx, t.by);
      const from = sideOf(t, s.ax, s.ay);
      const to = sideOf(t, s.bx, s.by);
      if (ends === 0 || from * to === 0) return null;
      if (ends > 0 || from * to > 0) continue;
      const { x, y } = crossingOf(s, t);
      if (found.length === 2 || isCorner(ring, x, y) || isCorner(taken, x, y)) return null;
      const enters = to > 0;
      if (!isBetweenEnds(x, y, s, enters ? t : turned(t))) return null;
      found.push({ x, y, cut: i, taken: j, enters });
    }
  }
  const [a, b] = found;
  return a && b && (a.x !== b.x || a.y !== b.y) ? found : null;
}

/**
 * Whether a crossing, rounded, lies within the ring of both edges' ends: else what is left and what is taken would lie round
 * it in another order than where they cross. The first edge runs from right to left of the second one.
 */
function isBetweenEnds(x: number, y: number, s: Segment, t: Segment): boolean {
  const ends = [t.bx, t.by, s.bx, s.by, t.ax, t.ay, s.ax, s.ay];
  return segmentsOf(ends).every((side) => sideOf(side, x, y) > 0);
}

function turned({ ax, ay, bx, by }: Segment): Segment {
  return { ax: bx, ay: by, bx: ax, by: ay };
}

function isCorner(ring: Ring, x: number, y: number): boolean {
  for (let i = 0; i < ring.length; i += 2) if (ring[i] === x && ring[i + 1] === y) return true;
  return false;
}

/** The corners that one of the rings has on its way from a crossing to another. */
function cornersBetween(ring: Ring, from: Crossing, to: Crossing, which: "cut" | "taken"): Ring {
  const [first, last] = [2 * from[which] + 2, 2 * to[which] + 2];
  if (first < last) return ring.slice(first, last);
  if (first === last && isFirst(ring, from, to, first - 2)) return [];
  return [...ring.slice(first), ...ring.slice(0, last)];
}

/** Whether of two places on the edge that begins at a corner the one comes before the other. */
function isFirst(ring: Ring, one: Crossing, other: Crossing, corner: number): boolean {
  const wayTo = ({ x, y }: Crossing) =>
    Math.abs(x - ring[corner]!) + Math.abs(y - ring[corner + 1]!);
  return wayTo(one) < wayTo(other);
}

/** Corners the other way round. */
function backwards(ring: Ring): Ring {
  const turned: number[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) turned.push(ring[i]!, ring[i + 1]!);
  return turned;
}
