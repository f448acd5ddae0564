import type { Nm } from "../measure/index.js";
import type { Wall } from "../model/index.js";
import {
  cutOf,
  judgedRegion,
  pieceBounds,
  pieceId,
  type SolvedLay,
  visibleExtent,
} from "../solver/index.js";

/** The cut piece whose seen width or height is the smallest, as the rules judge sizes. */
export interface SmallestCut {
  readonly piece: string;
  readonly width: Nm;
  readonly height: Nm;
}

/** A lay in a few figures. */
export interface LayReading {
  readonly courses: number;
  readonly pieces: number;
  readonly cuts: number;
  /** null when no piece is cut shorter or lower than its tile. */
  readonly smallest: SmallestCut | null;
}

/** The figures of a lay of a wall, or of a surface inside an opening. */
export function layReading(wall: Wall, solved: SolvedLay): LayReading {
  const { pieces, courses, lattice } = solved;
  const region = judgedRegion(wall, solved.region);
  let cuts = 0;
  let smallest: SmallestCut | null = null;
  let least = Infinity;
  for (let i = 0; i < pieces.count; i++) {
    if (cutOf(pieces, i) === "none") continue;
    cuts++;
    const seen = visibleExtent(region, pieceBounds(pieces, i));
    if (!seen) continue;
    const width = seen.width < lattice.face.across ? seen.width : Infinity;
    const height = seen.height < lattice.face.up ? seen.height : Infinity;
    if (Math.min(width, height) >= least) continue;
    least = Math.min(width, height);
    smallest = { piece: pieceId(solved, i), width: seen.width, height: seen.height };
  }
  return { courses: courses.length, pieces: pieces.count, cuts, smallest };
}
