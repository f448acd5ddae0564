import type { Ring } from "../shape.js";
import { crossSign } from "./turn.js";

/** An edge of a ring, from a to b. */
export interface Segment {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** A ring's edges, each from the corner of its number. */
export function segmentsOf(ring: Ring): Segment[] {
  const segments: Segment[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    segments.push({ ax: ring[i]!, ay: ring[i + 1]!, bx: ring[j]!, by: ring[j + 1]! });
  }
  return segments;
}

/** Whether two segments lie clear of each other already by the upright boxes round them. */
export function areClear(s: Segment, t: Segment): boolean {
  return (
    Math.max(s.ax, s.bx) < Math.min(t.ax, t.bx) ||
    Math.max(t.ax, t.bx) < Math.min(s.ax, s.bx) ||
    Math.max(s.ay, s.by) < Math.min(t.ay, t.by) ||
    Math.max(t.ay, t.by) < Math.min(s.ay, s.by)
  );
}

/** On which side of a segment's line a place lies: 1 on its left, -1 on its right, 0 on it. */
export function sideOf(s: Segment, x: number, y: number): number {
  return crossSign(s.bx - s.ax, s.by - s.ay, x - s.ax, y - s.ay);
}

/** Where two segments that cross do so, rounded once to the nearest nanometre. */
export function crossingOf(s: Segment, t: Segment): { readonly x: number; readonly y: number } {
  const dx = t.bx - t.ax;
  const dy = t.by - t.ay;
  const a = dx * (s.ay - t.ay) - dy * (s.ax - t.ax);
  const b = dx * (s.by - t.ay) - dy * (s.bx - t.ax);
  const along = a / (a - b);
  // A crossing with an upright or level segment keeps that segment's place exactly.
  return {
    x: dx === 0 ? t.ax : Math.round(s.ax + (s.bx - s.ax) * along),
    y: dy === 0 ? t.ay : Math.round(s.ay + (s.by - s.ay) * along),
  };
}
