import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import { pieceBounds, type PieceTable, type Ring } from "../../solver/index.js";

/** A run along a side: across for bottom and top, up for left and right. */
export interface Stretch {
  readonly from: Nm;
  readonly to: Nm;
}

/**
 * From where to where a piece's outline runs straight along a side of its bounds; null when it only
 * touches that side with a corner or an arc.
 */
export function stretchAlong(pieces: PieceTable, i: number, side: Side): Stretch | null {
  const upright = side === "left" || side === "right";
  const outline = pieces.shapes.get(i)?.outline;
  if (outline) return stretchOn(outline, upright ? 0 : 1, pieceBounds(pieces, i)[side]);
  const low = 4 * i + (upright ? 1 : 0);
  return { from: pieces.bounds[low]!, to: pieces.bounds[low + 2]! };
}

/** Along the line where coordinate `fixed` (0 is x, 1 is y) is `value`. */
function stretchOn(outline: Ring, fixed: 0 | 1, value: Nm): Stretch | null {
  let from = Infinity;
  let to = -Infinity;
  for (let k = 0; k < outline.length; k += 2) {
    const next = (k + 2) % outline.length;
    if (outline[k + fixed] !== value || outline[next + fixed] !== value) continue;
    const [a, b] = [outline[k + 1 - fixed]!, outline[next + 1 - fixed]!];
    from = Math.min(from, a, b);
    to = Math.max(to, a, b);
  }
  return from < to ? { from, to } : null;
}
