import type { Plan } from "../../model/index.js";
import { isSetCourse, pieceId, type SolvedWall } from "../../solver/index.js";
import type { WallCuts } from "../takeoff.js";
import { batchesOf } from "./batches.js";
import { pieceCut } from "./piece-cut.js";
import type { PieceToCut } from "./pieces-to-cut.js";

/** The cuts of one wall, of the pieces that are to be cut there; `insides` are those of its openings' surfaces. */
export function wallCuts(
  plan: Plan,
  solved: SolvedWall,
  mark: string,
  toCut: readonly PieceToCut[],
  insides: readonly WallCuts[] = [],
): WallCuts {
  const pieces = toCut.map(({ lay, label, index, course, factory }) => {
    const cut = pieceCut(solved, lay, index);
    const set = isSetCourse(lay, lay.pieces.course[index]!);
    const id = pieceId(lay, index);
    return { label, id, index, tile: lay.lay.tile, course, set, cut, factory };
  });
  const left = pieces.filter(({ set }) => !set);
  return { wall: solved.wall.name, mark, pieces, batches: batchesOf(plan, left), insides };
}
