import {
  type Course,
  countingLay,
  isSetCourse,
  pieceBounds,
  type SolvedLay,
} from "../solver/index.js";
import type { OnWall, Pair } from "./comparison.js";
import { FATE, type PieceMatch } from "./match-pieces.js";

/**
 * The courses that are set before, and those that are set after, whose pieces the other plan has otherwise. Up
 * they may move, since a measured top moves what is drawn; across, and in size and shape, what is on a wall stays.
 */
export function setCoursesCut(matches: readonly PieceMatch[]): Pair<readonly OnWall[]> {
  const told = { before: new Told(), after: new Told() };
  for (const { lays, fates, twin } of matches) {
    const { before, after } = lays;
    if (!before || !after) continue;
    const back = new Int32Array(after.pieces.count).fill(-1);
    twin.forEach((j, i) => {
      if (j >= 0) back[j] = i;
    });
    const [old, now] = [
      { lay: before, fates: fates.before, twin },
      { lay: after, fates: fates.after, twin: back },
    ];
    told.before.add(old, now);
    told.after.add(now, old);
  }
  return { before: told.before.all(), after: told.after.all() };
}

/** A lay in one plan: what became of each piece in the other, and its counterpart there (or -1). */
interface Matched {
  readonly lay: SolvedLay;
  readonly fates: Uint8Array;
  readonly twin: Int32Array;
}

class Told {
  readonly #lays = new Map<string | null, { courses: Set<number>; pieces: number }>();

  /** What is set of a lay and differs in the other plan, and what that has among it besides. */
  add(own: Matched, other: Matched): void {
    const { lay, fates } = own;
    if (!lay.stand) return;
    for (let i = 0; i < fates.length; i++) {
      const course = lay.pieces.course[i]!;
      if (isSetCourse(lay, course) && differs(own, i, other.lay)) this.#tell(lay, course);
    }
    const set = lay.courses.filter(({ number }) => isSetCourse(lay, number));
    for (let j = 0; j < other.fates.length; j++) {
      const among = other.fates[j] === FATE.apart ? courseAt(set, other.lay, j) : undefined;
      if (among) this.#tell(lay, among.number);
    }
  }

  #tell(lay: SolvedLay, course: number): void {
    const name = countingLay(lay);
    const found = this.#lays.get(name) ?? { courses: new Set(), pieces: 0 };
    found.courses.add(lay.below + course);
    found.pieces++;
    this.#lays.set(name, found);
  }

  all(): OnWall[] {
    return [...this.#lays].map(([lay, { courses, pieces }]) => ({
      lay,
      courses: [...courses].sort((a, b) => a - b),
      pieces,
    }));
  }
}

function differs({ lay, fates, twin }: Matched, i: number, other: SolvedLay): boolean {
  const fate = fates[i];
  if (fate === FATE.apart) return true;
  if (fate !== FATE.recut && fate !== FATE.moved) return false;
  const j = twin[i]!;
  const [a, b] = [pieceBounds(lay.pieces, i), pieceBounds(other.pieces, j)];
  if (a.left !== b.left) return true;
  if (fate === FATE.moved) return false;
  return !isDrawnElsewhere(lay, i, other, j) || a.right !== b.right;
}

/** Whether a course of one tile is set in both plans at two heights: measured anew, it meets what is beside it otherwise. */
function isDrawnElsewhere(lay: SolvedLay, i: number, other: SolvedLay, j: number): boolean {
  const [course, same] = [lay.pieces.course[i]!, other.pieces.course[j]!];
  return (
    isSetCourse(other, same) &&
    lay.lattice.face.up === other.lattice.face.up &&
    lay.courses[course - 1]!.bottom !== other.courses[same - 1]!.bottom
  );
}

/** The course that the middle of another lay's piece is in. */
function courseAt(courses: readonly Course[], { pieces }: SolvedLay, j: number) {
  const { bottom, top } = pieceBounds(pieces, j);
  const doubled = bottom + top;
  return courses.find((course) => 2 * course.bottom < doubled && doubled < 2 * course.top);
}
