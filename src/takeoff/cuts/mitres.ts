import type { Nm } from "../../measure/index.js";
import { cutOf, type SolvedLay, type SolvedWall } from "../../solver/index.js";
import type { Mitre } from "../takeoff.js";
import { lengthAlong } from "./side-length.js";

const HANDS: readonly Mitre["side"][] = ["left", "right"];

/** The edges of a piece that are mitred: those along an outside corner that is said to be a mitre. */
export function mitresOf(wall: SolvedWall, lay: SolvedLay, i: number): Mitre[] {
  return mitresAt(lay, i, mitredHands(wall, lay));
}

/** Whether the saw has work on a piece of a lay: its face is cut, or an edge of it is mitred. */
export function worked(wall: SolvedWall, lay: SolvedLay): (i: number) => boolean {
  const hands = mitredHands(wall, lay);
  const isCut = (i: number) => cutOf(lay.pieces, i) !== "none";
  if (hands.length === 0) return isCut;
  return (i) => isCut(i) || mitresAt(lay, i, hands).length > 0;
}

/** How many mitred edges a wall's tile has, and how long they are together, nm. */
export function mitredEdges(wall: SolvedWall): { readonly count: number; readonly length: Nm } {
  let [count, length] = [0, 0];
  for (const lay of wall.lays) {
    const hands = mitredHands(wall, lay);
    if (hands.length === 0) continue;
    for (let i = 0; i < lay.pieces.count; i++) {
      for (const mitre of mitresAt(lay, i, hands)) {
        count++;
        length += mitre.length;
      }
    }
  }
  return { count, length };
}

/** The ends of a wall at which a lay's tile is mitred. */
function mitredHands({ wall }: SolvedWall, { inner }: SolvedLay): readonly Mitre["side"][] {
  return HANDS.filter((side) => {
    const { meets } = wall.edges[side];
    return meets.kind === "outside" && meets.lap === "mitre" && !inner.includes(side);
  });
}

function mitresAt(lay: SolvedLay, i: number, hands: readonly Mitre["side"][]): Mitre[] {
  return hands.flatMap((side) => {
    const length = lengthAlong(lay, i, side);
    return length > 0 ? [{ side, length }] : [];
  });
}
