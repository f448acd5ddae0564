import type { WallText } from "./wall-text.js";

/** The edges of a wall whose bottom meets that. */
export const overEdge = (bottom: string): string =>
  `left free\nright free\ntop free\nbottom ${bottom} movement 1/8`;

/** A niche (or what else) with lines of its own, in a wall over a pan. */
export const inPan = (lines: string, kind = "niche", more: WallText = {}): WallText => ({
  size: "48 x 36",
  edges: overEdge("pan"),
  wall: `${kind} soap {\n at 12, 6\n size 14 x 12\n movement 1/8\n ${lines}\n}`,
  ...more,
});
