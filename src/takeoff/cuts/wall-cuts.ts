import type { Plan } from "../../model/index.js";
import { pieceId, type SolvedWall } from "../../solver/index.js";
import { pieceLabel } from "../labels/piece-label.js";
import type { CutPiece, WallCuts } from "../takeoff.js";
import { batchesOf } from "./batches.js";
import { factoryEdges } from "./factory-edges.js";
import { worked } from "./mitres.js";
import { pieceCut } from "./piece-cut.js";

/** The cuts of one wall. Whole tiles cost nothing but a look. */
export function wallCuts(plan: Plan, solved: SolvedWall, mark: string): WallCuts {
  const pieces = cutPieces(solved, mark);
  return { wall: solved.wall.name, mark, pieces, batches: batchesOf(plan, pieces) };
}

function cutPieces(solved: SolvedWall, mark: string): CutPiece[] {
  const cut: CutPiece[] = [];
  for (const lay of solved.lays) {
    const { pieces } = lay;
    const isWorked = worked(solved, lay);
    for (let i = 0; i < pieces.count; i++) {
      if (!isWorked(i)) continue;
      cut.push({
        label: pieceLabel(mark, lay, i),
        id: pieceId(lay, i),
        index: i,
        tile: lay.lay.tile,
        course: lay.below + pieces.course[i]!,
        cut: pieceCut(solved, lay, i),
        factory: factoryEdges(solved, lay, i),
      });
    }
  }
  return cut;
}
