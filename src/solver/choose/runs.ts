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
  const { face, module } = axis;
  const first = firstPast(origin, face, module, axis.low);
  const end = lastBefore(origin, module, axis.high) + 1;
  const marks: number[] = [first, end];
  for (const edge of axis.edges) {
    const k = Math.floor((edge - origin) / module);
    const into = edge - origin - k * module;
    if (into < face) mark(k);
    if (into > 0) mark(k + 1);
  }
  const sloped = axis.slopes.map((slope) => {
    const from = firstPast(origin, face, module, slope.low);
    const to = lastBefore(origin, module, slope.high) + 1;
    mark(from);
    mark(to);
    return [from, to] as const;
  });
  marks.sort((a, b) => a - b);
  const runs: Run[] = [];
  for (let i = 1; i < marks.length; i++) {
    const [from, to] = [marks[i - 1]!, marks[i]!];
    if (from < to) runs.push({ from, to, sloped: sloped.some(([a, b]) => from < b && to > a) });
  }
  return runs;

  function mark(k: number): void {
    if (k > first && k < end) marks.push(k);
  }
}
