import type { Nm } from "../measure/index.js";
import { cutOf, pieceBounds, pieceId, type SolvedLay, visibleExtent } from "../solver/index.js";

/** The cut piece whose seen width or height is the smallest. */
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

export function layReading(solved: SolvedLay): LayReading {
  const { pieces, courses, lattice, region } = solved;
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
