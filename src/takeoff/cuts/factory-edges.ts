import { showsEnd, type Side } from "../../model/index.js";
import type { Box, PieceTable, SolvedLay, SolvedWall } from "../../solver/index.js";
import { meetsTile } from "./neighbours.js";
import { lengthAlong } from "./side-length.js";
import { stretchAlong } from "./stretch.js";
import { boundsWithinTile } from "./tile-frame.js";

/** A side of a piece that runs along its tile's edge. */
interface OwnSide {
  readonly side: Side;
  /** Another tile faces it across a field joint. */
  readonly meets: boolean;
}

/** What was asked of tables already: two plans share the table of a wall that didn't change. */
const KNOWN = new WeakMap<PieceTable, Map<number, readonly OwnSide[]>>();

/**
 * The edges of a piece that have to be its tile's own, because they show: those that face another tile
 * across a field joint, and those along a side of the wall that stays free, or laps over an outside corner,
 * without trim. What meets another corner, a frame or an opening is covered or sealed, and may be cut.
 */
export function factoryEdges(wall: SolvedWall, lay: SolvedLay, i: number): Side[] {
  const edges: Side[] = [];
  for (const { side, meets } of knownSides(lay, i)) {
    if (meets || isBare(wall, lay, i, side)) edges.push(side);
  }
  return edges;
}

function knownSides(lay: SolvedLay, i: number): readonly OwnSide[] {
  let known = KNOWN.get(lay.pieces);
  if (!known) KNOWN.set(lay.pieces, (known = new Map<number, readonly OwnSide[]>()));
  let sides = known.get(i);
  if (!sides) known.set(i, (sides = ownSides(lay, i)));
  return sides;
}

function ownSides(lay: SolvedLay, i: number): OwnSide[] {
  const sides: OwnSide[] = [];
  for (const side of ownEdges(boundsWithinTile(lay, i), lay)) {
    const stretch = stretchAlong(lay.pieces, i, side);
    if (stretch) sides.push({ side, meets: meetsTile(lay, i, side, stretch) });
  }
  return sides;
}

/** The sides of a piece that reach its tile's edges. */
export function ownEdges(box: Box, { lattice }: SolvedLay): Side[] {
  const { across, up } = lattice.face;
  const sides: Side[] = [];
  if (box.left === 0) sides.push("left");
  if (box.right === across) sides.push("right");
  if (box.bottom === 0) sides.push("bottom");
  if (box.top === up) sides.push("top");
  return sides;
}

function isBare({ wall }: SolvedWall, lay: SolvedLay, i: number, side: Side): boolean {
  const isShown = showsEnd(wall.edges[side].meets) && !lay.inner.includes(side);
  return isShown && lengthAlong(lay, i, side) > 0;
}
