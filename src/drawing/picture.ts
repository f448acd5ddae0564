import type { Nm } from "../measure/index.js";
import type { Box, Ring } from "../solver/index.js";
import type { PictureBox, Points } from "./scene.js";

/** A picture length to the thousandth of a millimetre, so that it prints short and the same everywhere. */
export function rounded(mm: number): number {
  return Math.round(mm * 1000) / 1000 + 0;
}

/** Nanometres across a wall as picture millimetres. */
export function across(nm: Nm): number {
  return Math.round(nm / 1000) / 1000;
}

/** Nanometres above the level line as picture millimetres, which run down. */
export function down(nm: Nm): number {
  return Math.round(-nm / 1000) / 1000 + 0;
}

export function pictureRing(ring: Ring): Points {
  return ring.map((value, i) => (i % 2 === 0 ? across(value) : down(value)));
}

export function pictureBox(box: Box): PictureBox {
  return {
    left: across(box.left),
    top: down(box.top),
    right: across(box.right),
    bottom: down(box.bottom),
  };
}

/** The ring of a box. */
export function boxRing({ left, top, right, bottom }: PictureBox): Points {
  return [left, bottom, right, bottom, right, top, left, top];
}

/** The smallest box round these points. */
export function boundsOfPoints(points: Points): PictureBox {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (let i = 0; i < points.length; i += 2) {
    left = Math.min(left, points[i]!);
    right = Math.max(right, points[i]!);
    top = Math.min(top, points[i + 1]!);
    bottom = Math.max(bottom, points[i + 1]!);
  }
  return { left, top, right, bottom };
}
