import type { Nm } from "../measure/index.js";

/** An upright rectangle, in nanometres from the wall's left substrate and level line. */
export interface Box {
  readonly left: Nm;
  readonly bottom: Nm;
  readonly right: Nm;
  readonly top: Nm;
}

/** The box drawn out by `by` on every side (drawn in when negative). */
export function grown(box: Box, by: Nm): Box {
  return {
    left: box.left - by,
    bottom: box.bottom - by,
    right: box.right + by,
    top: box.top + by,
  };
}

/** Whether the two boxes share more than an edge. */
export function overlaps(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}

/** Whether a box has all of another within it or on its edge. */
export function encloses(outer: Box, inner: Box): boolean {
  return (
    outer.left <= inner.left &&
    outer.bottom <= inner.bottom &&
    outer.right >= inner.right &&
    outer.top >= inner.top
  );
}

/** What two boxes that overlap have in common. */
export function shared(a: Box, b: Box): Box {
  return {
    left: Math.max(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
    top: Math.min(a.top, b.top),
  };
}
