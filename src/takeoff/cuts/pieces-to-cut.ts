import type { SolvedLay, SolvedWall } from "../../solver/index.js";
import { pieceLabels } from "../labels/piece-labels.js";
import type { CutPiece } from "../takeoff.js";
import { factoryEdges } from "./factory-edges.js";
import { worked } from "./mitres.js";

/**
 * A piece that is no whole tile, or has a mitred edge: all that decides which tile it can come from, but
 * not yet how it is cut.
 */
export interface PieceToCut extends Omit<CutPiece, "id" | "tile" | "cut" | "set"> {
  readonly lay: SolvedLay;
}

/** A wall's pieces that the saw has work on, course by course. Whole tiles cost nothing but a look. */
export function piecesToCut(solved: SolvedWall, mark: string): PieceToCut[] {
  const toCut: PieceToCut[] = [];
  for (const lay of solved.lays) {
    const { pieces } = lay;
    const isWorked = worked(solved, lay);
    const labelOf = pieceLabels(mark, lay);
    for (let i = 0; i < pieces.count; i++) {
      if (!isWorked(i)) continue;
      toCut.push({
        lay,
        label: labelOf(i),
        index: i,
        course: lay.below + pieces.course[i]!,
        factory: factoryEdges(solved, lay, i),
      });
    }
  }
  return toCut;
}
