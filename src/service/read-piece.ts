import {
  cutOf,
  pieceBounds,
  pieceId,
  pieceShape,
  type SolvedLay,
  type SolvedWall,
  visibleBounds,
} from "../solver/index.js";
import { CUT_WORDS } from "./cut-words.js";
import type { Figures } from "./figures.js";
import type { Read } from "./read-spot.js";

/** What a setter says of a piece: its course and place, its size, its cut, what is hidden of it. */
export function readPiece(wall: SolvedWall, lay: SolvedLay, i: number, figures: Figures): Read {
  const { pieces } = lay;
  const box = pieceBounds(pieces, i);
  const seen = visibleBounds(pieces, i);
  const { tile } = lay.lay;
  const size = figures.size(box.right - box.left, box.top - box.bottom);
  const facts: (readonly [string, string])[] = [
    ["size", size],
    ["cut", CUT_WORDS[cutOf(pieces, i)]],
    ["across", figures.reach(box.left, box.right)],
    ["up", figures.reach(box.bottom, box.top)],
    ["tile", tile.title || tile.name],
  ];
  if (!seen) facts.splice(1, 0, ["seen", `nothing: ${coveredBy(wall)} covers it`]);
  else if (pieces.visible.has(i)) {
    const part = figures.size(seen.right - seen.left, seen.top - seen.bottom);
    facts.splice(1, 0, ["seen", `${part}; ${coveredBy(wall)} covers the rest`]);
  }
  return {
    title: `Course ${lay.below + pieces.course[i]!}, piece ${pieces.column[i]!}`,
    facts,
    shape: pieceShape(pieces, i),
    piece: pieceId(lay, i),
    origin: lay.lay.origin,
  };
}

/** `the tile of left and plumbing`. */
function coveredBy({ wall }: SolvedWall): string {
  const { left, right } = wall.edges;
  const walls = [left, right].flatMap(({ meets }) =>
    meets.kind === "corner" && meets.lap === "under" ? [meets.wall] : [],
  );
  return `the tile of ${walls.join(" and ")}`;
}
