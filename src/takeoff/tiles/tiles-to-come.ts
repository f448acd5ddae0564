import type { Tile } from "../../model/index.js";
import { isSetCourse, type SolvedPlan, surfacesOf } from "../../solver/index.js";
import { worked } from "../cuts/mitres.js";
import type { PieceToCut } from "../cuts/pieces-to-cut.js";
import type { CutTile, TilesToCome } from "../takeoff.js";
import { purchaseOf } from "./purchase.js";

/** What is still to come of a tile that is cut up so; null where none of it is set. */
export function tilesToCome(
  solved: SolvedPlan,
  tile: Tile,
  toCut: readonly (readonly PieceToCut[])[],
  cut: readonly CutTile[],
): TilesToCome | null {
  const pieces = toCut.flat().filter(({ lay }) => lay.lay.tile === tile && lay.stand !== null);
  const set = new Set(
    pieces
      .filter(({ lay, index }) => isSetCourse(lay, lay.pieces.course[index]!))
      .map(({ label }) => label),
  );
  const whole = wholeTiles(solved, tile);
  if (whole.set === 0 && set.size === 0) return null;
  const used = cut.filter((each) => each.pieces.some(({ label }) => set.has(label)));
  const fromUsed = used.flatMap((each) => each.pieces).filter(({ label }) => !set.has(label));
  return {
    used: whole.set + used.length,
    fromUsed: fromUsed.length,
    ...purchaseOf(tile, whole.toCome + cut.length - used.length),
  };
}

/** Tiles that need no saw. */
function wholeTiles({ walls }: SolvedPlan, tile: Tile) {
  let [set, toCome] = [0, 0];
  for (const wall of surfacesOf(walls)) {
    for (const laid of wall.lays.filter(({ lay }) => lay.tile === tile)) {
      const isWorked = worked(wall, laid);
      for (let i = 0; i < laid.pieces.count; i++) {
        if (isWorked(i)) continue;
        if (isSetCourse(laid, laid.pieces.course[i]!)) set++;
        else toCome++;
      }
    }
  }
  return { set, toCome };
}
