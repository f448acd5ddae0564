import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import { circleRing } from "../clip/circle.js";
import type { Ring } from "../shape.js";
import type { RoundHole } from "../solved.js";

/** What a stretch of a box's outline that a hole leaves reaches over, and whether it goes on at a corner. */
interface Stretch {
  readonly bounds: Box;
  readonly fromCorner: boolean;
  readonly toCorner: boolean;
}

/**
 * The bounds of the parts that one round hole leaves of a box, as cutting comes to them; null when
 * it takes nothing away. A hole is convex, so each part has one stretch of the box's outline, and
 * reaches no further than that.
 */
export function roundParts(box: Box, { box: hole }: RoundHole): readonly Box[] | null {
  const { left, bottom, right, top } = box;
  if (hole.left >= left && hole.right <= right && hole.bottom >= bottom && hole.top <= top) {
    return [box];
  }
  const ring = circleRing(hole);
  const stretches: Stretch[] = [];
  const addSide = (from: Nm, to: Nm, chord: Chord | null, place: (a: Nm, b: Nm) => Box) => {
    const low = Math.min(from, to);
    const high = Math.max(from, to);
    const ahead = to > from;
    if (!chord || chord[1] <= low || chord[0] >= high || chord[0] >= chord[1]) {
      stretches.push({ bounds: place(low, high), fromCorner: true, toCorner: true });
      return;
    }
    const before = chord[0] > low ? place(low, chord[0]) : null;
    const after = chord[1] < high ? place(chord[1], high) : null;
    const [first, second] = ahead ? [before, after] : [after, before];
    if (first) stretches.push({ bounds: first, fromCorner: true, toCorner: false });
    if (second) stretches.push({ bounds: second, fromCorner: false, toCorner: true });
  };
  const level = (y: Nm) => (a: Nm, b: Nm) => ({ left: a, bottom: y, right: b, top: y });
  const upright = (x: Nm) => (a: Nm, b: Nm) => ({ left: x, bottom: a, right: x, top: b });
  addSide(left, right, chordAt(ring, bottom, 1), level(bottom));
  addSide(bottom, top, chordAt(ring, right, 0), upright(right));
  addSide(right, left, chordAt(ring, top, 1), level(top));
  addSide(top, bottom, chordAt(ring, left, 0), upright(left));
  const isMet = stretches.length !== 4 || stretches.some((s) => !s.fromCorner || !s.toCorner);
  return isMet ? joined(stretches) : null;
}

type Chord = readonly [Nm, Nm];

/** Where a ring is along the level (1) or upright (0) line at a place. */
function chordAt(ring: Ring, at: Nm, axis: 0 | 1): Chord | null {
  let low = Infinity;
  let high = -Infinity;
  const n = ring.length;
  for (let i = 0, j = n - 2; i < n; j = i, i += 2) {
    const a = ring[j + axis]!;
    const b = ring[i + axis]!;
    if (a <= at === b <= at) continue;
    const c = ring[j + 1 - axis]!;
    const place = Math.round(c + ((ring[i + 1 - axis]! - c) * (at - a)) / (b - a));
    if (place < low) low = place;
    if (place > high) high = place;
  }
  return low < high ? [low, high] : null;
}

/** The bounds of stretches that go on into each other round the corners. */
function joined(stretches: readonly Stretch[]): Box[] {
  const parts: Box[] = [];
  let open = false;
  for (const { bounds, fromCorner, toCorner } of stretches) {
    if (fromCorner && open) parts.push(around(parts.pop()!, bounds));
    else parts.push(bounds);
    open = toCorner;
  }
  if (open && stretches[0]!.fromCorner && parts.length > 1) {
    parts[0] = around(parts[0]!, parts.pop()!);
  }
  return parts;
}

function around(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
    top: Math.max(a.top, b.top),
  };
}
