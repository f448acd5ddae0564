import type { Nm } from "../../measure/index.js";
import { firstPast, lastBefore } from "../lattice.js";
import type { Axis } from "./field.js";

/** Neighbouring tiles of a row that meet every straight edge alike. */
export interface Run {
  readonly from: number;
  /** One past the last. */
  readonly to: number;
  /** Whether a side slopes where they are, so that they may differ after all. */
  readonly sloped: boolean;
}

/**
 * The row of tiles from `origin` in runs: a tile with an edge inside it is a run of its own, tiles
 * between two edges are one. So the weighing of a start costs the same however many tiles there are.
 */
export function runsOf(axis: Axis, origin: Nm): Run[] {
  const { face, module, slopes } = axis;
  const first = firstPast(origin, face, module, axis.low);
  const end = lastBefore(origin, module, axis.high) + 1;
  const sloped = slopes.map(({ low, high }) => ({
    from: firstPast(origin, face, module, low),
    to: lastBefore(origin, module, high) + 1,
  }));
  const marks = [first];
  const mark = (k: number): void => {
    if (k > marks.at(-1)! && k < end) marks.push(k);
  };
  // Edges are in rising order, and so are their tiles.
  for (const edge of axis.edges) {
    const k = Math.floor((edge - origin) / module);
    const into = edge - origin - k * module;
    if (into < face) mark(k);
    if (into > 0) mark(k + 1);
  }
  if (slopes.length > 0) addBetween(marks, end, sloped);
  if (end > first) marks.push(end);
  const runs: Run[] = [];
  for (let i = 1; i < marks.length; i++) {
    const [from, to] = [marks[i - 1]!, marks[i]!];
    runs.push({ from, to, sloped: sloped.some((slope) => from < slope.to && to > slope.from) });
  }
  return runs;
}

/** Puts where slopes begin and end among marks. */
function addBetween(
  marks: number[],
  end: number,
  sloped: readonly { readonly from: number; readonly to: number }[],
): void {
  const [first] = marks;
  const known = new Set(marks);
  for (const k of sloped.flatMap(({ from, to }) => [from, to])) {
    if (k > first! && k < end && !known.has(k)) marks.push(k);
    known.add(k);
  }
  marks.sort((a, b) => a - b);
}
