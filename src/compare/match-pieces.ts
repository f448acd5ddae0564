import type { Nm } from "../measure/index.js";
import {
  courseBottom,
  courseShift,
  moduleAcross,
  moduleUp,
  type SolvedLay,
  type SolvedWall,
} from "../solver/index.js";
import type { Change, CourseShift, Pair } from "./comparison.js";
import { type CourseSpan, type LayMatch, matchLays } from "./match-lays.js";
import { matchRows, type Row } from "./match-rows.js";
import { sameCut } from "./same-cut.js";

/**
 * What became of a piece; `apart` is a piece without a counterpart: gone, or new. What is `elsewhere` is in a
 * course that another match tells of.
 */
export const FATE = { kept: 0, moved: 1, recut: 2, apart: 3, elsewhere: 4 } as const;

/** The pieces of a wall before and after, each beside its counterpart. */
export interface PieceMatch {
  readonly lays: Change<SolvedLay>;
  /** Whether these are the lowest courses of what the plan states as one lay. */
  readonly lowest: boolean;
  /** For each piece before, its counterpart after, or -1. */
  readonly twin: Int32Array;
  /** Each piece's fate, as FATE tells. */
  readonly fates: Pair<Uint8Array>;
  /** How the courses moved; null where the joint or the face changed, so that they drifted. */
  readonly shift: CourseShift | null;
  /** Whether the tile's face changed so much that no piece can be told to be an old one. */
  readonly anew: boolean;
}

/** A face may change by a quarter and is still the tile that it was (another lot, a measured face). */
const SAME_TILE = 4;

/** Matches the pieces of a wall lay by lay: by their place in the course, and courses by their place up the wall. */
export function matchPieces(wall: Change<SolvedWall>): readonly PieceMatch[] {
  return matchLays(wall).map(matchLay);
}

function matchLay({ lays, spans, lowest }: LayMatch): PieceMatch {
  const [old, now] = [lays.before, lays.after];
  const twin = new Int32Array(old?.pieces.count ?? 0).fill(-1);
  const fates = { before: untold(old, spans.before), after: untold(now, spans.after) };
  const anew = old !== null && now !== null && !isSameTile(old, now);
  const [oldCourses, nowCourses] = [coursesIn(old, spans.before), coursesIn(now, spans.after)];
  if (!old || !now || anew || oldCourses.length === 0 || nowCourses.length === 0) {
    return { lays, lowest, twin, fates, shift: null, anew };
  }
  if (old.pieces === now.pieces && !spans.before && !spans.after) {
    fates.before.fill(FATE.kept);
    fates.after.fill(FATE.kept);
    const shift = shiftOf(old, now, 0, new Set([0]));
    return { lays, lowest, twin: twin.map((_, i) => i), fates, shift, anew };
  }
  const by = matchRows(courseRow(old, oldCourses), courseRow(now, nowCourses));
  const placeOf = new Map(nowCourses.map((number) => [number, number - 1]));
  const shifts = new Set<Nm>();
  for (const number of oldCourses) {
    const [i, j] = [number - 1, placeOf.get(number + by)];
    if (j !== undefined) shifts.add(matchCourse(old, i, now, j, twin));
  }
  for (let i = 0; i < twin.length; i++) {
    const j = twin[i]!;
    if (j < 0) continue;
    fates.before[i] = fates.after[j] = fateOf(old, i, now, j);
  }
  return { lays, lowest, twin, fates, shift: shiftOf(old, now, by, shifts), anew };
}

function isSameTile({ lattice: a }: SolvedLay, { lattice: b }: SolvedLay): boolean {
  const near = (x: Nm, y: Nm) => SAME_TILE * Math.abs(x - y) <= Math.min(x, y);
  return near(a.face.across, b.face.across) && near(a.face.up, b.face.up);
}

/** The numbers of a lay's courses within a span. */
function coursesIn(lay: SolvedLay | null, span: CourseSpan | null): readonly number[] {
  const numbers = lay?.courses.map(({ number }) => number) ?? [];
  return span ? numbers.filter((number) => span.first <= number && number <= span.last) : numbers;
}

/** Every piece of the span without a counterpart yet. */
function untold(lay: SolvedLay | null, span: CourseSpan | null): Uint8Array<ArrayBuffer> {
  const fates = new Uint8Array(lay?.pieces.count ?? 0).fill(FATE.apart);
  if (!lay || !span) return fates;
  const { course } = lay.pieces;
  return fates.map((fate, i) =>
    span.first <= course[i]! && course[i]! <= span.last ? fate : FATE.elsewhere,
  );
}

function courseRow({ lattice }: SolvedLay, courses: readonly number[]): Row {
  return {
    origin: courseBottom(lattice, 0),
    module: moduleUp(lattice),
    face: lattice.face.up,
    first: courses[0]!,
    last: courses.at(-1)!,
    base: 0,
  };
}

/** Matches the pieces of course i before and course j after; answers how far the tiles moved across. */
function matchCourse(old: SolvedLay, i: number, now: SolvedLay, j: number, twin: Int32Array): Nm {
  const [before, after] = [tilesOf(old, i), tilesOf(now, j)];
  const by = matchRows(before.row, after.row);
  for (const [tile, parts] of before.parts) {
    const others = after.parts.get(tile + by);
    if (others) matchParts(old, parts, now, others, twin);
  }
  const { module } = before.row;
  return after.row.origin + by * module - before.row.origin;
}

interface CourseTiles {
  readonly row: Row;
  /** The pieces of each tile, by the tile's number from the lattice's origin. */
  readonly parts: ReadonlyMap<number, readonly number[]>;
}

function tilesOf({ lattice, courses, pieces }: SolvedLay, course: number): CourseTiles {
  const module = moduleAcross(lattice);
  const origin = lattice.x + courseShift(lattice, courses[course]!.number);
  const parts = new Map<number, number[]>();
  const [from, to] = [pieces.courseStart[course]!, pieces.courseStart[course + 1]!];
  for (let i = from; i < to; i++) {
    const tile = Math.floor((pieces.bounds[4 * i]! - origin) / module);
    const own = parts.get(tile);
    if (own) own.push(i);
    else parts.set(tile, [i]);
  }
  let [first, last] = [Infinity, -Infinity];
  for (const tile of parts.keys()) [first, last] = [Math.min(first, tile), Math.max(last, tile)];
  const base = pieces.column[parts.get(first)![0]!]! - first;
  const row = { origin, module, face: lattice.face.across, first, last, base };
  return { row, parts };
}

/** Matches the parts of one tile: in their order where there are as many, else the nearest first. */
function matchParts(
  old: SolvedLay,
  before: readonly number[],
  now: SolvedLay,
  after: readonly number[],
  twin: Int32Array,
): void {
  if (before.length === after.length) {
    before.forEach((i, n) => (twin[i] = after[n]!));
    return;
  }
  const apart = (i: number, j: number) =>
    [0, 1, 2, 3].reduce(
      (sum, k) => sum + Math.abs(old.pieces.bounds[4 * i + k]! - now.pieces.bounds[4 * j + k]!),
      0,
    );
  const taken = new Set<number>();
  const pairs = before.flatMap((i, n) =>
    after.map((j, m) => ({ i, j, far: apart(i, j), away: Math.abs(n - m), sum: n + m })),
  );
  pairs.sort((a, b) => a.far - b.far || a.away - b.away || a.sum - b.sum);
  for (const { i, j } of pairs) {
    if (twin[i]! >= 0 || taken.has(j)) continue;
    twin[i] = j;
    taken.add(j);
  }
}

function fateOf(old: SolvedLay, i: number, now: SolvedLay, j: number): number {
  if (!sameCut(old.pieces, i, now.pieces, j)) return FATE.recut;
  for (let k = 0; k < 4; k++) {
    if (old.pieces.bounds[4 * i + k] !== now.pieces.bounds[4 * j + k]) return FATE.moved;
  }
  return FATE.kept;
}

function shiftOf(
  old: SolvedLay,
  now: SolvedLay,
  by: number,
  across: ReadonlySet<Nm>,
): CourseShift | null {
  const [a, b] = [old.lattice, now.lattice];
  const alike = a.joint === b.joint && a.face.across === b.face.across && a.face.up === b.face.up;
  if (!alike) return null;
  const up = courseBottom(b, by) - courseBottom(a, 0);
  return { up, across: [...across].sort((x, y) => x - y) };
}
