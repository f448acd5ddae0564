import type { CutTile } from "../takeoff.js";
import { cutBound } from "./cut-bound.js";
import { cutEnds } from "./cut-ends.js";
import { Cutting } from "./cutting.js";
import type { Demand } from "./demand.js";
import type { Face } from "./face.js";
import { packRests } from "./pack-rests.js";

/** Tiles as they are cut up. */
export interface CutTiles {
  readonly tiles: readonly CutTile[];
  /** No way of cutting takes fewer tiles. */
  readonly bound: number;
  /** In nm², twice over. */
  readonly doubleKerf: bigint;
}

/**
 * Cuts every demanded piece from a tile: ends first, two a tile wherever two fit, then all others from
 * what is left. The tiles are in the order of their first pieces.
 */
export function cutTiles(face: Face, demands: readonly Demand[]): CutTiles {
  const cutting = Cutting.of(face);
  const ends = cutEnds(cutting, demands);
  const bound = cutBound(face, demands, ends.tiles);
  const packed = packRests(cutting, ends.left, bound);
  return { tiles: tilesOf(packed, demands), bound, doubleKerf: packed.doubleKerf };
}

function tilesOf(cutting: Cutting, demands: readonly Demand[]): CutTile[] {
  const order = new Map(demands.map((demand, n) => [demand, n]));
  const tiles = Array.from({ length: cutting.tiles }, () => ({
    first: Infinity,
    pieces: [] as CutTile["pieces"][number][],
    offcuts: [] as CutTile["offcuts"][number][],
  }));
  for (const { tile, demand, box, turns } of cutting.placed) {
    const into = tiles[tile]!;
    into.pieces.push({ label: demand.label, box, turns });
    into.first = Math.min(into.first, order.get(demand)!);
  }
  for (const { tile, box } of cutting.shelf.all()) tiles[tile]!.offcuts.push(box);
  return tiles
    .sort((a, b) => a.first - b.first)
    .map(({ pieces, offcuts }) => ({ pieces, offcuts }));
}
