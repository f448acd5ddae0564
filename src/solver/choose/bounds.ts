import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import { firstPast, lastBefore } from "../lattice.js";
import { imbalanceAcross, imbalanceUp } from "./balance.js";
import { type Axis, type Field, isFlat } from "./field.js";

/**
 * What a start in one direction costs at least, whatever is chosen in the other. The tiles counted
 * for a start across and for a start up are never the same ones, so the two may be added.
 */
export interface Bound {
  slivers: number;
  underHalf: number;
  imbalance: Nm;
}

export const NO_BOUND: Bound = { slivers: 0, underHalf: 0, imbalance: 0 };

export function boundAcross(field: Field, x: Nm): Bound {
  const bound = { ...NO_BOUND, imbalance: imbalanceAcross(field.balance, x) };
  for (const shift of field.shifts) addEnds(field, x + shift, bound);
  return bound;
}

/** The ends of a phase's courses: a column each, of as many courses as nothing else touches. */
function addEnds(field: Field, origin: Nm, bound: Bound): void {
  const { across, up, judge } = field;
  const { face, module, clearLow, clearHigh } = across;
  if (clearLow >= clearHigh) return;
  const first = origin + firstPast(origin, face, module, clearLow) * module;
  const last = origin + lastBefore(origin, module, clearHigh) * module;
  const lefts = [];
  if (isFlat(across.seenFrom)) lefts.push(first);
  if (isFlat(across.seenTo) && (last !== first || lefts.length === 0)) lefts.push(last);
  for (const left of lefts) {
    const from = Math.max(left, clearLow);
    const to = Math.min(left + face, clearHigh);
    if (from >= to || to - from === face || isClippedBySlope(across, left)) continue;
    const isSliver = to - from < across.sliver;
    const isForced = judge.forcesEnds && !(from > left && to < left + face);
    if (!isSliver && (isForced || to - from >= across.half)) continue;
    let courses = Math.floor((up.clearHigh - up.clearLow) / up.module);
    for (const box of obstaclesOf(field)) {
      if (box.left >= left + face || box.right <= left) continue;
      courses -= Math.ceil((box.top - box.bottom) / up.module) + 1;
    }
    const many = Math.floor(Math.max(0, courses) / field.shifts.length);
    if (isSliver) bound.slivers += many;
    else bound.underHalf += many;
  }
}

/** Bottom and top course: those columns that neither an end nor an obstacle touches. */
export function boundUp(field: Field, y: Nm): Bound {
  const { across, up } = field;
  const bound = { ...NO_BOUND, imbalance: imbalanceUp(field.balance, y) };
  for (const [bottom, low, high] of cutCourses(up, y)) {
    const height = high - low;
    if (height >= up.half && height >= up.sliver) continue;
    let columns = Math.floor((across.clearHigh - across.clearLow) / across.module) - 2;
    for (const box of obstaclesOf(field)) {
      if (box.bottom >= bottom + up.face || box.top <= bottom) continue;
      columns -= Math.ceil((box.right - box.left) / across.module) + 1;
    }
    if (height < up.sliver) bound.slivers += Math.max(0, columns);
    else bound.underHalf += Math.max(0, columns);
  }
  return bound;
}

function cutCourses(up: Axis, y: Nm): [Nm, Nm, Nm][] {
  const { face, module, clearLow, clearHigh } = up;
  if (clearLow >= clearHigh) return [];
  const first = y + firstPast(y, face, module, clearLow) * module;
  const last = y + lastBefore(y, module, clearHigh) * module;
  const bottoms = [];
  if (isFlat(up.seenFrom)) bottoms.push(first);
  if (isFlat(up.seenTo) && (last !== first || bottoms.length === 0)) bottoms.push(last);
  return bottoms
    .filter((b) => !isClippedBySlope(up, b))
    .map((b): [Nm, Nm, Nm] => [b, Math.max(b, clearLow), Math.min(b + face, clearHigh)])
    .filter(([, low, high]) => low < high && high - low < face);
}

/** Whether what is seen of the tile depends on where along a slope it is. */
function isClippedBySlope(axis: Axis, origin: Nm): boolean {
  const { seenFrom, seenTo, clearLow, clearHigh, face } = axis;
  return (!isFlat(seenFrom) && origin < clearLow) || (!isFlat(seenTo) && origin + face > clearHigh);
}

function obstaclesOf(field: Field): readonly Box[] {
  return field.circles.length === 0 ? field.boxes : [...field.boxes, ...field.circles];
}
