import type { Nm } from "../../measure/index.js";
import type { Tile } from "../../model/index.js";
import { type Box, doublePieceArea, type SolvedPlan, surfacesOf } from "../../solver/index.js";
import { worked } from "../cuts/mitres.js";
import type { PieceToCut } from "../cuts/pieces-to-cut.js";
import type { CutTile, TileTakeoff } from "../takeoff.js";
import { cutTiles } from "./cut-tiles.js";
import { type Demand, demandOf } from "./demand.js";
import { purchaseOf } from "./purchase.js";
import { tilesToCome } from "./tiles-to-come.js";

/**
 * What every tile of the plan takes that is laid somewhere, in the order of the plan. `toCut` are the
 * pieces to cut of each wall, and of each surface inside an opening.
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
  const { tiles, doubleKerf } = cutUp;
  const counts = setOf(solved, tile);
  const needed = counts.whole + tiles.length;
  return {
    tile,
    whole: counts.whole,
    cut: tiles,
    get cutBound() {
      return cutUp.bound;
    },
    ...purchaseOf(tile, needed),
    toCome: tilesToCome(solved, tile, toCut, tiles),
    doubleArea: {
      set: counts.doubleWhole + counts.doubleCut,
      offcuts: sum(tiles.flatMap(({ offcuts }) => offcuts.map(doubleBoxArea))),
      kerf: doubleKerf,
      cutOut: boundsArea(tiles) - counts.doubleCut,
    },
  };
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

/** What is set of a tile: whole tiles that need no saw, and the areas of both sorts in nm², twice over. */
function setOf({ walls }: SolvedPlan, tile: Tile) {
  let whole = 0;
  let doubleCut = 0n;
  for (const wall of surfacesOf(walls)) {
    for (const laid of wall.lays.filter(({ lay }) => lay.tile === tile)) {
      const isWorked = worked(wall, laid);
      for (let i = 0; i < laid.pieces.count; i++) {
        if (isWorked(i)) doubleCut += doublePieceArea(laid.pieces, i);
        else whole++;
      }
    }
  }
  const doubleWhole = BigInt(whole) * 2n * BigInt(tile.face.across) * BigInt(tile.face.up);
  return { whole, doubleWhole, doubleCut };
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
