import type { Nm } from "../../measure/index.js";
import type { Side, Wall } from "../../model/index.js";
import { bareSide, type Chain } from "../../solver/index.js";

/** A side of the bare wall as it was measured. */
export function bareSideOf(wall: Wall, side: Side): Chain {
  const base = { left: 0, bottom: 0, right: wall.size.across, top: wall.size.up };
  return bareSide(wall.edges[side], base[side]);
}

/** Where a side was measured, at a riser once; both its ends where it wasn't. */
export function placesAlong(wall: Wall, side: Side): readonly Nm[] {
  const { measured } = wall.edges[side];
  if (measured.length > 0) return [...new Set(measured.map((reading) => reading.at))];
  const upright = side === "left" || side === "right";
  return [0, upright ? wall.size.up : wall.size.across];
}
