import {
  boundsOf,
  pieceId,
  pieceShape,
  visibleShapes,
  type PieceTable,
  type SolvedWall,
} from "../../solver/index.js";
import { pictureBox, pictureRing } from "../picture.js";
import type { Mark, PictureBox } from "../scene.js";
import type { FindingGroup } from "./finding-groups.js";

/** A wall with more marks than this is all mark: the first ones are drawn. */
const MOST_MARKS = 2000;

/** A place that wants a badge: the piece that a finding speaks of. */
export interface BadgeWish {
  readonly group: FindingGroup;
  readonly around: PictureBox;
}

/** The outlines of the pieces that findings speak of, and where each finding's badge would stand. */
export function findingMarks(
  solved: SolvedWall,
  groups: readonly FindingGroup[],
): { marks: Mark[]; wishes: BadgeWish[] } {
  const marks: Mark[] = [];
  const wishes: BadgeWish[] = [];
  const marked = new Set<string>();
  for (const group of groups) {
    for (const finding of group.findings) {
      let first = true;
      for (const id of finding.pieces ?? []) {
        const piece = findPiece(solved, id);
        if (!piece || marks.length >= MOST_MARKS) continue;
        const [shape] = visibleShapes(piece.table, piece.index);
        const outline = (shape ?? pieceShape(piece.table, piece.index)).outline;
        if (first) wishes.push({ group, around: pictureBox(boundsOf(outline)) });
        first = false;
        // The gravest finding of a piece comes first and keeps its outline.
        if (marked.has(id)) continue;
        marked.add(id);
        marks.push({ severity: group.severity, piece: id, ring: pictureRing(outline) });
      }
    }
  }
  return { marks, wishes };
}

function findPiece(solved: SolvedWall, id: string): { table: PieceTable; index: number } | null {
  const course = Number(/\/(-?\d+)\/\d+[a-z]?$/.exec(id)?.[1]);
  for (const lay of solved.lays) {
    const row = lay.courses.findIndex((each) => lay.below + each.number === course);
    if (row < 0) continue;
    const { pieces } = lay;
    for (let i = pieces.courseStart[row]!; i < pieces.courseStart[row + 1]!; i++) {
      if (pieceId(lay, i) === id) return { table: pieces, index: i };
    }
  }
  return null;
}
