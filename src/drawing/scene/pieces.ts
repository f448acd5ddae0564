import type { Limits } from "../../model/index.js";
import {
  CUTS,
  FAULT,
  isInside,
  judgedRegion,
  judgeOf,
  judgePiece,
  type Cut,
  type PieceTable,
  type SolvedLay,
  type SolvedWall,
} from "../../solver/index.js";
import { coursesBefore } from "./main-lay.js";
import { across, down, pictureRing } from "../picture.js";
import type { PieceGroup, PieceKind, Points } from "../scene.js";

const KIND_OF_CUT: Readonly<Record<Cut, PieceKind>> = {
  none: "whole",
  end: "cut",
  rip: "cut",
  corner: "cut",
  notch: "notch",
  slot: "notch",
  scribe: "scribe",
  hole: "hole",
};

/** From the quietest to the one that is drawn last. */
export const PIECE_KINDS: readonly PieceKind[] = [
  "whole",
  "cut",
  "notch",
  "scribe",
  "hole",
  "sliver",
];

interface GrowingGroup {
  readonly kind: PieceKind;
  readonly course: number;
  readonly boxes: number[];
  readonly shapes: (readonly Points[])[];
}

/** The pieces of a wall, by kind, then by course: a change in one course changes one or two groups. */
export function pieceGroups(solved: SolvedWall, limits: Limits): PieceGroup[] {
  return solved.lays.flatMap((lay) => layGroups(solved, lay, limits));
}

function layGroups(solved: SolvedWall, lay: SolvedLay, limits: Limits): PieceGroup[] {
  const kinds = kindsOf(solved, lay, limits);
  const before = coursesBefore(solved, lay);
  const groups: GrowingGroup[] = [];
  const current = new Map<PieceKind, GrowingGroup>();
  for (let i = 0; i < lay.pieces.count; i++) {
    const kind = PIECE_KINDS[kinds[i]!]!;
    const course = before + lay.pieces.course[i]!;
    let group = current.get(kind);
    if (group?.course !== course) {
      group = { kind, course, boxes: [], shapes: [] };
      current.set(kind, group);
      groups.push(group);
    }
    addPiece(group, lay.pieces, i);
  }
  return PIECE_KINDS.flatMap((kind) => groups.filter((group) => group.kind === kind));
}

function addPiece(group: GrowingGroup, pieces: PieceTable, i: number): void {
  const shape = pieces.shapes.get(i);
  if (shape) {
    group.shapes.push([shape.outline, ...shape.holes].map(pictureRing));
    return;
  }
  const { bounds } = pieces;
  group.boxes.push(
    across(bounds[4 * i]!),
    down(bounds[4 * i + 3]!),
    across(bounds[4 * i + 2]!),
    down(bounds[4 * i + 1]!),
  );
}

/** Each piece's kind, as an index into PIECE_KINDS; only cut pieces are weighed as slivers. */
function kindsOf(solved: SolvedWall, lay: SolvedLay, limits: Limits): Uint8Array {
  const { pieces } = lay;
  const judge = judgeOf(judgedRegion(solved.wall, lay.region), lay.lay, limits, isInside(solved));
  const ofCut = CUTS.map((cut) => PIECE_KINDS.indexOf(KIND_OF_CUT[cut]));
  const sliver = PIECE_KINDS.indexOf("sliver");
  const kinds = new Uint8Array(pieces.count);
  const b = pieces.bounds;
  for (let i = 0; i < pieces.count; i++) {
    kinds[i] = ofCut[pieces.cut[i]!]!;
    if (kinds[i] === 0 && !pieces.visible.has(i)) continue;
    // The tile's own left edge matters for halves only, which are not asked for here.
    const left = b[4 * i]!;
    const faults = judgePiece(judge, left, b[4 * i + 1]!, b[4 * i + 2]!, b[4 * i + 3]!, left);
    if ((faults & (FAULT.widthSliver | FAULT.heightSliver)) !== 0) kinds[i] = sliver;
  }
  return kinds;
}
