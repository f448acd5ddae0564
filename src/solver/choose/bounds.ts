import type { Nm } from "../../measure/index.js";
import { type Box, overlaps } from "../box.js";
import { firstPast, lastBefore } from "../lattice.js";
import { imbalanceAcross, imbalanceUp, tilesWithin } from "./balance.js";
import { type Axis, type Field, isFlat } from "./field.js";

/** The openings whose cuts are bounded: with more of them a bound would cost more than it saves. */
export const MOST_BOXES = 8;

/** What a start, or a pair of starts, costs at least. */
export interface Bound {
  slivers: number;
  underHalf: number;
  imbalance: Nm;
}

/** A column of one phase that is too narrow in certain courses. */
export interface Narrow {
  readonly phase: number;
  readonly isSliver: boolean;
  /** The box beside which those courses run; null: all courses, none of which meets an obstacle. */
  readonly beside: Box | null;
  /** How many courses that are, however the courses stand. */
  readonly least: number;
}

/** A start across: its bound whatever the start up, and what makes it. */
export interface AcrossBound extends Bound {
  readonly narrow: readonly Narrow[];
}

/**
 * Counts, for every phase, the end columns of the courses that no obstacle touches, and the columns
 * cut by an opening's jamb in the courses that run wholly beside it. The tiles counted here and by
 * `boundUp` are never the same ones, so the two may be added.
 */
export function boundAcross(
  field: Field,
  x: Nm,
  imbalance = imbalanceAcross(field.balance, x),
): AcrossBound {
  const { across, up, shifts, boxes } = field;
  const phases = shifts.length;
  const narrow: Narrow[] = [];
  let slivers = 0;
  let underHalf = 0;
  for (let phase = 0; phase < phases; phase++) {
    const origin = x + shifts[phase]!;
    addEnds(phase, origin);
    for (const box of boxes.slice(0, MOST_BOXES)) {
      const courses = wholeTiles(up, box.bottom, box.top);
      if (courses > 0) addJambs(phase, origin, box, Math.floor(courses / phases));
    }
  }
  return { slivers, underHalf, imbalance, narrow };

  function addEnds(phase: number, origin: Nm): void {
    const last = lastTile(across, origin);
    for (const left of firstTile(across, origin) === last
      ? [last]
      : [firstTile(across, origin), last]) {
      if (left === null) continue;
      const touched = rowsTouched(field, left);
      const courses = Math.floor(Math.max(0, tilesWithin(up) - touched) / phases);
      const to = Math.min(left + across.face, across.clearHigh);
      // Where an obstacle touches the column, only the least count is known.
      add(
        phase,
        left,
        Math.max(left, across.clearLow),
        to,
        touched > 0 ? undefined : null,
        courses,
      );
    }
  }

  function addJambs(phase: number, origin: Nm, box: Box, courses: number): void {
    const { face, clearLow, clearHigh } = across;
    const before = cutTileAt(across, origin, box.left);
    if (before !== null && isClear(before, box)) {
      const to = Math.min(box.left, clearHigh);
      add(phase, before, Math.max(before, clearLow), to, box, courses);
    }
    const after = cutTileAt(across, origin, box.right);
    if (after !== null && isClear(after, box)) {
      const from = Math.max(box.right, clearLow);
      add(phase, after, from, Math.min(after + face, clearHigh), box, courses);
    }
  }

  function isClear(left: Nm, box: Box): boolean {
    if (isClippedBySlope(across, left)) return false;
    return !meetsOther(field, box, { ...box, left, right: left + across.face });
  }

  function add(
    phase: number,
    left: Nm,
    from: Nm,
    to: Nm,
    beside: Box | null | undefined,
    least: number,
  ): void {
    const width = to - from;
    if (width <= 0 || width >= Math.max(across.sliver, across.half)) return;
    const isSliver = width < across.sliver;
    const isForced = field.judge.forcesEnds && !(from > left && to < left + across.face);
    if (!isSliver && isForced) return;
    if (isSliver) slivers += least;
    else underHalf += least;
    if (beside !== undefined) narrow.push({ phase, isSliver, beside, least });
  }
}

/**
 * Counts, in the bottom and the top course, the columns that neither an end nor an obstacle
 * touches, and in the courses cut by an opening's sill or head the columns wholly over or under it.
 */
export function boundUp(field: Field, y: Nm, imbalance = imbalanceUp(field.balance, y)): Bound {
  const { across, up } = field;
  const bound = { slivers: 0, underHalf: 0, imbalance };
  const first = firstTile(up, y);
  const last = lastTile(up, y);
  if (first !== null) addEnd(first);
  if (last !== null && last !== first) addEnd(last);
  for (const box of field.boxes.slice(0, MOST_BOXES)) {
    const columns = wholeTiles(across, box.left, box.right);
    if (columns <= 0) continue;
    const under = cutTileAt(up, y, box.bottom);
    if (under !== null && isClear(under, box)) {
      add(Math.min(box.bottom, up.clearHigh) - Math.max(under, up.clearLow), columns);
    }
    const over = cutTileAt(up, y, box.top);
    if (over !== null && isClear(over, box)) {
      add(Math.min(over + up.face, up.clearHigh) - Math.max(box.top, up.clearLow), columns);
    }
  }
  return bound;

  function addEnd(bottom: Nm): void {
    const height = Math.min(bottom + up.face, up.clearHigh) - Math.max(bottom, up.clearLow);
    add(height, tilesWithin(across) - 2 - columnsTouched(field, bottom));
  }

  function isClear(bottom: Nm, box: Box): boolean {
    if (isClippedBySlope(up, bottom)) return false;
    return !meetsOther(field, box, { ...box, bottom, top: bottom + up.face });
  }

  function add(height: Nm, columns: number): void {
    if (height <= 0 || columns <= 0) return;
    if (height < up.sliver) bound.slivers += columns;
    else if (height < up.half) bound.underHalf += columns;
  }
}

/** A pair's bound: the courses beside an opening are counted as they stand for this start up. */
export function boundPair(field: Field, across: AcrossBound, y: Nm, up: Bound): Bound {
  const imbalance = across.imbalance + up.imbalance;
  let slivers = across.slivers + up.slivers;
  let underHalf = across.underHalf + up.underHalf;
  if (across.narrow.length > 0 && isFirstCourse(field, y)) {
    for (const { phase, isSliver, beside, least } of across.narrow) {
      const more = coursesOf(field, y, phase, beside) - least;
      if (isSliver) slivers += more;
      else underHalf += more;
    }
  }
  return { slivers, underHalf, imbalance };
}

/** How many courses of a phase stand wholly beside a box, or are seen at all, for a start up. */
function coursesOf({ up, shifts }: Field, y: Nm, phase: number, beside: Box | null): number {
  const { face, module, clearLow, clearHigh } = up;
  const from = beside
    ? Math.ceil((Math.max(beside.bottom, clearLow) - y) / module)
    : firstPast(y, face, module, clearLow);
  const to = beside
    ? Math.floor((Math.min(beside.top, clearHigh) - face - y) / module)
    : lastBefore(y, module, clearHigh);
  const q = shifts.length;
  return Math.floor((to - phase) / q) - Math.floor((from - 1 - phase) / q);
}

/** Whether the course at `y` surely has a piece, and so is course 1. */
function isFirstCourse(field: Field, y: Nm): boolean {
  if (y + field.up.face <= field.up.clearLow) return false;
  return tilesWithin(field.across) > columnsTouched(field, y);
}

/** The near edge of the first tile of a row, where a straight side bounds it. */
function firstTile(axis: Axis, origin: Nm): Nm | null {
  const { face, module, clearLow, clearHigh } = axis;
  if (clearLow >= clearHigh || !isFlat(axis.seenFrom)) return null;
  const first = origin + firstPast(origin, face, module, clearLow) * module;
  return isClippedBySlope(axis, first) ? null : first;
}

/** The near edge of the last tile of a row, where a straight side bounds it. */
function lastTile(axis: Axis, origin: Nm): Nm | null {
  const { module, clearLow, clearHigh } = axis;
  if (clearLow >= clearHigh || !isFlat(axis.seenTo)) return null;
  const last = origin + lastBefore(origin, module, clearHigh) * module;
  return isClippedBySlope(axis, last) ? null : last;
}

/** The near edge of the tile of a row that a place cuts, or null when it cuts none. */
function cutTileAt({ face, module }: Axis, origin: Nm, place: Nm): Nm | null {
  const near = origin + Math.floor((place - origin) / module) * module;
  return near < place && place < near + face ? near : null;
}

/** How many whole tiles of a row lie between two places and in the clear, at least. */
function wholeTiles({ clearLow, clearHigh, face, module }: Axis, from: Nm, to: Nm): number {
  return Math.floor((Math.min(to, clearHigh) - Math.max(from, clearLow) - face) / module);
}

/** How many courses of a column from `left` meet an obstacle, at most. */
function rowsTouched(field: Field, left: Nm): number {
  const right = left + field.across.face;
  let rows = 0;
  for (const box of field.obstacles) {
    if (box.left >= right || box.right <= left) continue;
    rows += Math.ceil((box.top - box.bottom) / field.up.module) + 1;
  }
  return rows;
}

/** How many columns of a course from `bottom` meet an obstacle, at most. */
export function columnsTouched(field: Field, bottom: Nm): number {
  const top = bottom + field.up.face;
  let columns = 0;
  for (const box of field.obstacles) {
    if (box.bottom >= top || box.top <= bottom) continue;
    columns += Math.ceil((box.right - box.left) / field.across.module) + 1;
  }
  return columns;
}

/** Whether what is seen of the tile depends on where along a slope it is. */
function isClippedBySlope(axis: Axis, origin: Nm): boolean {
  const { seenFrom, seenTo, clearLow, clearHigh, face } = axis;
  return (!isFlat(seenFrom) && origin < clearLow) || (!isFlat(seenTo) && origin + face > clearHigh);
}

function meetsOther(field: Field, box: Box, area: Box): boolean {
  return field.obstacles.some((other) => other !== box && overlaps(other, area));
}
