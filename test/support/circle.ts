import type { Nm } from "../../src/measure/index.js";
import type { Box, Ring } from "../../src/solver/index.js";

export interface Circle {
  readonly x: Nm;
  readonly y: Nm;
  readonly across: Nm;
}

/**
 * A round hole is cut as the regular polygon of 96 corners inscribed in it, one corner at its right:
 * its area is (96 / 2 pi) sin(2 pi / 96) of the circle's, so 0.0714 % under it.
 */
export const HOLE_CORNERS = 96;

/** The inscribed polygon of a hole, each corner rounded to the nearest nanometre. */
export function holeRing({ x, y, across }: Circle): Ring {
  return Array.from({ length: HOLE_CORNERS }, (_, i) => {
    const angle = (2 * Math.PI * i) / HOLE_CORNERS;
    return [
      Math.round(x + (across / 2) * Math.cos(angle)),
      Math.round(y + (across / 2) * Math.sin(angle)),
    ];
  }).flat();
}

/** Whether a side from a to b is one of the hole's: its ends and its middle lie on the polygon. */
export function isOnHole(
  { x, y, across }: Circle,
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
): boolean {
  const outer = across / 2 + 1;
  const inner = (across / 2) * Math.cos(Math.PI / HOLE_CORNERS) - 1;
  const places = [
    [ax, ay],
    [(ax + bx) / 2, (ay + by) / 2],
    [bx, by],
  ] as const;
  return places.every(([px, py]) => {
    const distance = Math.hypot(px - x, py - y);
    return distance <= outer && distance >= inner;
  });
}

/** The box that the circle fills. */
export function boxRound({ x, y, across }: Circle): Box {
  const radius = Math.ceil(across / 2);
  return { left: x - radius, bottom: y - radius, right: x + radius, top: y + radius };
}
