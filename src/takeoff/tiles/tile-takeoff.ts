import type { Nm } from "../../measure/index.js";
import type { Tile } from "../../model/index.js";
import { type Box, doublePieceArea, type SolvedPlan, surfacesOf } from "../../solver/index.js";
import type { PieceToCut } from "../cuts/pieces-to-cut.js";
import type { CutTile, TileAreas, TilesToCome, TileTakeoff } from "../takeoff.js";
import { type CutTiles, cutTiles } from "./cut-tiles.js";
import { type Demand, demandOf } from "./demand.js";
import { purchaseOf } from "./purchase.js";
import { tilesToCome } from "./tiles-to-come.js";

/**
 * What every tile of the plan takes that is laid somewhere, in the order of the plan. `toCut` are the
 * pieces to cut of each wall, and of each surface inside an opening. Who counts tiles wants no areas, so
 * that those are worked out when they are first asked for.
 */
export function tileTakeoffs(
  solved: SolvedPlan,
  toCut: readonly (readonly PieceToCut[])[],
  kerf: Nm,
): TileTakeoff[] {
  return solved.plan.tiles.flatMap((tile) => {
    const laid = surfacesOf(solved.walls).some(({ lays }) =>
      lays.some(({ lay }) => lay.tile === tile),
    );
    return laid ? [tileTakeoff(solved, tile, toCut, kerf)] : [];
  });
}

function tileTakeoff(
  solved: SolvedPlan,
  tile: Tile,
  toCut: readonly (readonly PieceToCut[])[],
  kerf: Nm,
): TileTakeoff {
  const { face, directional } = tile;
  const demands = demandsOf(tile, toCut);
  const cutUp = cutTiles({ ...face, directional, kerf }, demands);
  // All the others need no saw.
  const whole = countOf(solved, tile) - demands.length;
  let toCome: TilesToCome | null | undefined;
  let areas: TileAreas | undefined;
  return {
    tile,
    whole,
    get cut() {
      return cutUp.tiles;
    },
    get cutBound() {
      return cutUp.bound;
    },
    ...purchaseOf(tile, whole + cutUp.count),
    get toCome() {
      if (toCome === undefined) toCome = tilesToCome(solved, tile, toCut, cutUp.tiles);
      return toCome;
    },
    get doubleArea() {
      return (areas ??= areasOf(tile, whole, toCut, cutUp));
    },
  };
}

/** How many pieces of a tile all walls have. */
function countOf({ walls }: SolvedPlan, tile: Tile): number {
  return surfacesOf(walls)
    .flatMap(({ lays }) => lays)
    .reduce((sum, { lay, pieces }) => (lay.tile === tile ? sum + pieces.count : sum), 0);
}

/** The cut pieces of a tile on all walls; courses are counted through, wall after wall. */
function demandsOf(tile: Tile, toCut: readonly (readonly PieceToCut[])[]): Demand[] {
  let below = 0;
  return toCut.flatMap((pieces) => {
    const base = below;
    below += highestCourse(pieces);
    return pieces
      .filter(({ lay }) => lay.lay.tile === tile)
      .map((piece) => demandOf(piece, base + piece.course));
  });
}

/** Pieces are listed course by course, so the last one's is the highest. */
function highestCourse(pieces: readonly PieceToCut[]): number {
  return pieces.at(-1)?.course ?? 0;
}

function areasOf(
  tile: Tile,
  whole: number,
  toCut: readonly (readonly PieceToCut[])[],
  { tiles, doubleKerf }: CutTiles,
): TileAreas {
  const doubleWhole = BigInt(whole) * 2n * BigInt(tile.face.across) * BigInt(tile.face.up);
  const cut = toCut.flat().filter(({ lay }) => lay.lay.tile === tile);
  const doubleCut = sum(cut.map(({ lay, index }) => doublePieceArea(lay.pieces, index)));
  return {
    set: doubleWhole + doubleCut,
    offcuts: sum(tiles.flatMap(({ offcuts }) => offcuts.map(doubleBoxArea))),
    kerf: doubleKerf,
    cutOut: boundsArea(tiles) - doubleCut,
  };
}

function boundsArea(tiles: readonly CutTile[]): bigint {
  return sum(tiles.flatMap(({ pieces }) => pieces.map(({ box }) => doubleBoxArea(box))));
}

function doubleBoxArea({ left, bottom, right, top }: Box): bigint {
  return 2n * BigInt(right - left) * BigInt(top - bottom);
}

function sum(areas: readonly bigint[]): bigint {
  return areas.reduce((total, area) => total + area, 0n);
}
