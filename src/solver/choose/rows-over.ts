import { firstPast } from "../lattice.js";
import type { Axis } from "./field.js";
import type { Span } from "./start-box.js";

/** Where an edge is: one place, or all that a slope reaches over. */
export interface EdgeSpan extends Span {
  readonly slopes: boolean;
}

/** Neighbouring tiles of a row that no edge touches, or one tile that some edge may. */
export interface TileRun {
  /** The first tile's number, counted from the row's origin. */
  readonly first: number;
  readonly many: number;
  /** Whether a side slopes where they are, so that like tiles of other rows may differ. */
  readonly slopes: boolean;
}

/** All tiles that a row may have in the region, in runs; its origin is somewhere in `origin`. */
export function runsOver(axis: Axis, origin: Span, edges: readonly EdgeSpan[]): TileRun[] {
  const { face, module, low, high } = axis;
  const runs: (TileRun & { many: number })[] = [];
  let passed = -1;
  let k = firstPast(origin.to, face, module, low);
  for (; origin.from + k * module < high; k++) {
    const [from, to] = [origin.from + k * module, origin.to + k * module + face];
    let before = 0;
    let touched = false;
    let slopes = false;
    for (const edge of edges) {
      if (edge.to <= from) before++;
      else if (edge.from < to) {
        touched = true;
        slopes ||= edge.slopes;
      }
    }
    if (!touched && before === passed) runs.at(-1)!.many++;
    else runs.push({ first: k, many: 1, slopes });
    passed = touched ? -1 : before;
  }
  return runs;
}
