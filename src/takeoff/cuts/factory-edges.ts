import { showsEnd, type Side } from "../../model/index.js";
import type { Box, SolvedLay, SolvedWall } from "../../solver/index.js";
import { meetsTile } from "./neighbours.js";
import { lengthAlong } from "./side-length.js";
import { stretchAlong } from "./stretch.js";
import { boundsWithinTile } from "./tile-frame.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/**
 * The edges of a piece that have to be its tile's own, because they show: those that face another tile
 * across a field joint, and those along a side of the wall that stays free, or laps over an outside corner,
 * without trim. What meets another corner, a frame or an opening is covered or sealed, and may be cut.
 */
export function factoryEdges(wall: SolvedWall, lay: SolvedLay, i: number): Side[] {
  const own = ownEdges(boundsWithinTile(lay, i), lay);
  return own.filter((side) => {
    const stretch = stretchAlong(lay.pieces, i, side);
    return stretch !== null && (meetsTile(lay, i, side, stretch) || isBare(wall, lay, i, side));
  });
}

/** The sides of a piece that reach its tile's edges. */
export function ownEdges(box: Box, { lattice }: SolvedLay): Side[] {
  const edge: Readonly<Record<Side, number>> = {
    left: 0,
    bottom: 0,
    right: lattice.face.across,
    top: lattice.face.up,
  };
  return SIDES.filter((side) => box[side] === edge[side]);
}

function isBare({ wall }: SolvedWall, lay: SolvedLay, i: number, side: Side): boolean {
  const isShown = showsEnd(wall.edges[side].meets) && !lay.inner.includes(side);
  return isShown && lengthAlong(lay, i, side) > 0;
}
