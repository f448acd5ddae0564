import type { Box } from "../../solver/index.js";
import type { CutTile, PlacedPiece } from "../takeoff.js";
import { cutBound } from "./cut-bound.js";
import { cutEnds } from "./cut-ends.js";
import { Cutting } from "./cutting.js";
import type { Demand } from "./demand.js";
import type { Face } from "./face.js";
import { sortOut } from "./kinds.js";
import { packRests } from "./pack-rests.js";

/** Tiles as they are cut up. */
export interface CutTiles {
  readonly count: number;
  /** Put in order when they are first asked for. */
  readonly tiles: readonly CutTile[];
  /** No way of cutting takes fewer tiles. Worked out when it is first asked for. */
  readonly bound: number;
  /** In nm², twice over. */
  readonly doubleKerf: bigint;
}

/**
 * Cuts every demanded piece from a tile: ends first, two a tile wherever two fit, then all others from
 * what is left. The tiles are in the order of their first pieces, and so are the pieces in a tile.
 */
export function cutTiles(face: Face, demands: readonly Demand[]): CutTiles {
  const cutting = Cutting.of(face);
  const wants = sortOut(face, demands);
  const ends = cutEnds(cutting, wants);
  let known: number | undefined;
  const bound = (enough: number) => (known ??= cutBound(face, wants.kinds, ends.tiles, enough));
  const packed = packRests(cutting, ends.left, bound);
  let tiles: readonly CutTile[] | undefined;
  return {
    count: packed.tiles,
    get tiles() {
      return (tiles ??= tilesOf(packed, demands));
    },
    get bound() {
      return bound(packed.tiles);
    },
    get doubleKerf() {
      return packed.doubleKerf;
    },
  };
}

/** Tiles, and the pieces of each, in the order of the demands. */
function tilesOf(cutting: Cutting, demands: readonly Demand[]): CutTile[] {
  const order = new Map(demands.map((demand, n) => [demand, n]));
  const placed = [...cutting.placed].sort((a, b) => order.get(a.demand)! - order.get(b.demand)!);
  const tiles = new Map<number, { pieces: PlacedPiece[]; offcuts: Box[] }>();
  for (const { tile, demand, box, turns } of placed) {
    const piece = { label: demand.label, box, turns };
    const known = tiles.get(tile);
    if (known) known.pieces.push(piece);
    else tiles.set(tile, { pieces: [piece], offcuts: [] });
  }
  for (const { tile, box } of cutting.shelf.all()) tiles.get(tile)!.offcuts.push(box);
  return [...tiles.values()];
}
