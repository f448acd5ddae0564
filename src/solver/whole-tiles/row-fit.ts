import type { Nm } from "../../measure/index.js";

/** Tiles in a row, in one direction. */
export interface TileRow {
  readonly face: Nm;
  readonly joint: Nm;
  /** The near edge of a tile, in each phase of the bond that counts. */
  readonly origins: readonly Nm[];
}

/** From here to there along the row. */
export interface Stretch {
  readonly from: Nm;
  readonly to: Nm;
}

/** A stretch that takes the place of whole tiles. */
export interface Fit extends Stretch {
  readonly tiles: number;
}

/**
 * The length that takes the place of so many whole tiles: k T + (k + 1) J, so that the tiles at both
 * ends are whole (trade arithmetic: an opening for one 12 in tile at 1/8 is 12 1/4).
 */
export function wholeLength({ face, joint }: Pick<TileRow, "face" | "joint">, tiles: number): Nm {
  return tiles * face + (tiles + 1) * joint;
}

/** The numbers of tiles whose length is nearest to this one: the nearest first, three at most. */
export function tilesNear(row: Pick<TileRow, "face" | "joint">, length: Nm): number[] {
  const nearest = Math.round((length - row.joint) / (row.face + row.joint));
  const off = (tiles: number): Nm => Math.abs(wholeLength(row, tiles) - length);
  return [nearest - 1, nearest, nearest + 1, 1]
    .filter((tiles, i, all) => tiles >= 1 && all.indexOf(tiles) === i)
    .sort((a, b) => off(a) - off(b))
    .slice(0, 3);
}

/**
 * The stretch moved to where both its ends stand in joints, the shortest way that stays in the
 * room; what it leaves of the two joints is shared out evenly. null where its length doesn't let it.
 */
export function movedFit(row: TileRow, taken: Stretch, room: Stretch): Fit | null {
  const { joint } = row;
  const module = row.face + joint;
  const length = taken.to - taken.from;
  const over = modulo(joint - length, module);
  const tiles = (length + over - joint) / module;
  if (over > 2 * joint || tiles < 1) return null;
  const before = Math.floor(over / 2);
  const from = nearestPlace(row, before, length, taken.from, room);
  return from === null ? null : { from, to: from + length, tiles };
}

/** The nearest stretch in the room that takes the place of whole tiles exactly; null where none fits. */
export function sizedFit(row: TileRow, taken: Stretch, room: Stretch): Fit | null {
  for (const tiles of tilesNear(row, taken.to - taken.from)) {
    const length = wholeLength(row, tiles);
    const middling = Math.floor((taken.from + taken.to - length) / 2);
    const from = nearestPlace(row, 0, length, middling, room);
    if (from !== null) return { from, to: from + length, tiles };
  }
  return null;
}

/** The place nearest to the wanted one that is so far behind a tile's end. */
function nearestPlace(
  { face, joint, origins }: TileRow,
  behind: Nm,
  length: Nm,
  wanted: Nm,
  room: Stretch,
): Nm | null {
  const module = face + joint;
  let best: Nm | null = null;
  for (const origin of origins) {
    const base = origin + face + behind;
    const least = Math.ceil((room.from - base) / module);
    const most = Math.floor((room.to - length - base) / module);
    if (least > most) continue;
    const near = Math.min(most, Math.max(least, Math.round((wanted - base) / module)));
    const place = base + near * module;
    if (best === null || Math.abs(place - wanted) < Math.abs(best - wanted)) best = place;
  }
  return best;
}

function modulo(a: Nm, module: Nm): Nm {
  return ((a % module) + module) % module;
}
