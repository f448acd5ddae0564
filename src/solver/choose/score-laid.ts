import type { Lay, Limits, Wall } from "../../model/index.js";
import { FAULT, judgeOf, judgePiece, tileLeftOf } from "../judge.js";
import { judgedRegion } from "../judged-region.js";
import { cutOf, type PieceTable } from "../piece-table.js";
import type { Lattice, Region, Score } from "../solved.js";
import { balanceOf, imbalanceAcross, imbalanceUp } from "./balance.js";

/** What is laid on a wall, to be scored; `lattice` has its course 1 found, as `layPieces` gives it back. */
export interface Laid {
  readonly region: Region;
  readonly lay: Lay;
  readonly lattice: Lattice;
  readonly pieces: PieceTable;
}

const SLIVER = FAULT.widthSliver | FAULT.heightSliver;
const UNDER_HALF = FAULT.widthUnderHalf | FAULT.heightUnderHalf;
const CUT_TWICE: ReadonlySet<string> = new Set(["notch", "slot", "hole"]);

/**
 * The score of a lay of a wall as it is laid, counted piece by piece, as the rules judge pieces. The choice of a start comes to the
 * same numbers without laying the pieces.
 */
export function scoreOf(wall: Wall, laid: Laid, limits: Limits): Score {
  const { region, lay, lattice, pieces } = laid;
  const judge = judgeOf(judgedRegion(wall, region), lay, limits);
  const balance = balanceOf(region, lattice);
  let slivers = 0;
  let underHalf = 0;
  let cuts = 0;
  let tiles = 0;
  for (let i = 0; i < pieces.count; i++) {
    const [left, bottom, right, top] = pieces.bounds.subarray(4 * i, 4 * i + 4);
    const tileLeft = tileLeftOf(lattice, pieces.course[i]!, left!);
    const faults = judgePiece(judge, left!, bottom!, right!, top!, tileLeft);
    if (faults & SLIVER) slivers++;
    if (faults & UNDER_HALF) underHalf++;
    if (pieces.part[i] === 0) tiles++;
    const cut = cutOf(pieces, i);
    if (cut !== "none") cuts += CUT_TWICE.has(cut) ? 2 : 1;
  }
  const imbalance =
    pieces.count === 0 ? 0 : imbalanceAcross(balance, lattice.x) + imbalanceUp(balance, lattice.y);
  return { slivers, underHalf, imbalance, cuts, tiles, jointOver: lattice.joint - lay.joint.min };
}
