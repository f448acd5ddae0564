import { boxesOverlap, boxWithin } from "../labels.js";
import type { PictureBox, Place } from "../scene.js";

/** Rings of places that are tried round a thing before giving up. */
const RINGS = 14;
const PLACES_A_RING = 16;
/** How far off a thing the first ring is, in heights of what is placed: a name has a leader, which has to be seen. */
const FIRST_GAP = { over: 0.15, beside: 0.45 };

/**
 * The middle of the nearest free room of this size: first the middle of the thing (where `over` is
 * set), then rings of places round it, always within `bounds`. null when all are taken.
 */
export function freePlace(
  around: PictureBox,
  size: { readonly w: number; readonly h: number },
  taken: readonly PictureBox[],
  bounds: PictureBox,
  over: boolean,
): Place | null {
  const middle = { x: (around.left + around.right) / 2, y: (around.top + around.bottom) / 2 };
  const isFree = (place: Place): boolean => {
    const box = boxAt(place, size);
    return boxWithin(box, bounds) && !taken.some((other) => boxesOverlap(box, other));
  };
  if (over && isFree(middle)) return middle;
  const halfWidth = (around.right - around.left + size.w) / 2;
  const halfHeight = (around.bottom - around.top + size.h) / 2;
  for (let ring = 0; ring < RINGS; ring++) {
    const gap = ((over ? FIRST_GAP.over : FIRST_GAP.beside) + 0.5 * ring) * size.h;
    for (let step = 0; step < PLACES_A_RING; step++) {
      const [dx, dy] = onSquare(step / PLACES_A_RING);
      const place = {
        x: middle.x + dx * (halfWidth + gap),
        y: middle.y + dy * (halfHeight + gap),
      };
      if (isFree(place)) return place;
    }
  }
  return null;
}

export function boxAt(middle: Place, size: { readonly w: number; readonly h: number }): PictureBox {
  return {
    left: middle.x - size.w / 2,
    right: middle.x + size.w / 2,
    top: middle.y - size.h / 2,
    bottom: middle.y + size.h / 2,
  };
}

/** A point on the square from -1 to 1, from the middle of its right side on. */
function onSquare(turn: number): readonly [number, number] {
  const t = ((turn + 0.125) % 1) * 4;
  const side = Math.floor(t);
  const along = 2 * (t - side) - 1;
  switch (side) {
    case 0:
      return [1, along];
    case 1:
      return [-along, 1];
    case 2:
      return [-1, -along];
    default:
      return [along, -1];
  }
}
