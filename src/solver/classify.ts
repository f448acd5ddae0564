import type { Box } from "./box.js";
import type { TilePart } from "./cut-tile.js";
import { CUTS, type Cut } from "./piece-table.js";
import type { Ring } from "./shape.js";

const INDEX = Object.fromEntries(CUTS.map((cut, i) => [cut, i])) as Record<Cut, number>;

/** How a part is cut from its tile, as an index into CUTS. */
export function classify(part: TilePart, tile: Box): number {
  return INDEX[cutKind(part, tile)];
}

/** The cut of a plain rectangle out of a tile, as an index into CUTS. */
export function classifyBox(narrower: boolean, lower: boolean): number {
  if (narrower) return lower ? INDEX.corner : INDEX.end;
  return lower ? INDEX.rip : INDEX.none;
}

function cutKind({ bounds, shape, touched }: TilePart, tile: Box): Cut {
  if (!shape) {
    const narrower = bounds.left > tile.left || bounds.right < tile.right;
    const lower = bounds.bottom > tile.bottom || bounds.top < tile.top;
    return CUTS[classifyBox(narrower, lower)]!;
  }
  if (shape.holes.length > 0 || touched === "circle") return "hole";
  if (touched === "slope" && hasSlope(shape.outline)) return "scribe";
  return shape.outline.length === 12 ? "notch" : "slot";
}

function hasSlope(ring: Ring): boolean {
  return ring.some((x, i) => {
    if (i % 2 === 1) return false;
    const j = (i + 2) % ring.length;
    return x !== ring[j] && ring[i + 1] !== ring[j + 1];
  });
}
