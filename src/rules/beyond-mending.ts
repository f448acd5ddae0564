import { isSetCourse, type SolvedLay, type SolvedWall } from "../solver/index.js";
import type { Finding } from "./rule.js";
import { setName } from "./set-words.js";

/**
 * The courses that are set and that hold all of what was found, so that it can't be mended any more:
 * every piece concerned, or where none is named the lay that it speaks of. null where something is left to do.
 */
export function beyondMending(wall: SolvedWall, { pieces, blocks }: Finding): string | null {
  const set = wall.lays.filter(({ stand }) => stand !== null);
  if (set.length === 0) return null;
  const holding = pieces?.length
    ? set.filter((lay) => pieces.some((id) => isSetPiece(lay, id)))
    : set.filter(({ lay }) => lay.set!.from === 1 && blocks.includes(lay));
  if (pieces?.some((id) => !holding.some((lay) => isSetPiece(lay, id)))) return null;
  const names = holding.map((lay) => setName(lay)!);
  return names.length === 0 ? null : names.join(" and ");
}

/** Whether an id is that of a piece in a course of this lay that is set. */
function isSetPiece(lay: SolvedLay, id: string): boolean {
  const prefix = `${lay.idPrefix}/`;
  if (!id.startsWith(prefix)) return false;
  const course = Number(id.slice(prefix.length).split("/")[0]);
  return isSetCourse(lay, course - lay.below);
}
