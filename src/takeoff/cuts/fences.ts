import type { Side } from "../../model/index.js";
import type { Box, PieceTable, SolvedLay } from "../../solver/index.js";
import type { Fence } from "../takeoff.js";
import { ownEdges } from "./factory-edges.js";
import { stretchAlong } from "./stretch.js";

/**
 * The straight through-cuts of a piece: along every side that is no edge of its tile and is straight
 * somewhere. A strip that is cut at both sides needs one setting, since its tile or offcut has a
 * straight edge already.
 */
export function fencesOf(lay: SolvedLay, i: number, box: Box): Fence[] {
  const own = ownEdges(box, lay);
  const isCut = (side: Side) => !own.includes(side) && isStraight(lay.pieces, i, side);
  return [
    ...fencesAlong("across", "left", "right", box.right - box.left, isCut),
    ...fencesAlong("up", "bottom", "top", box.top - box.bottom, isCut),
  ];
}

function fencesAlong(
  along: Fence["along"],
  low: Side,
  high: Side,
  keep: number,
  isCut: (side: Side) => boolean,
): Fence[] {
  if (isCut(high)) return [{ along, from: low, keep }];
  return isCut(low) ? [{ along, from: high, keep }] : [];
}

function isStraight(pieces: PieceTable, i: number, side: Side): boolean {
  return stretchAlong(pieces, i, side) !== null;
}
