import type { Nm } from "../../measure/index.js";
import { firstPast, lastBefore } from "../lattice.js";
import { columnsTouched } from "./bounds.js";
import { type Axis, type Field, isFlat, type Reach } from "./field.js";

/**
 * How many pieces along a sloping bottom or top are slivers at least, for a start up and any start
 * across: wherever the side runs through the last sliver's height of a course, its tiles are.
 */
export function scribedSlivers(field: Field, y: Nm): number {
  const { up, across } = field;
  let slivers = 0;
  if (!isFlat(up.seenFrom)) {
    for (const bottom of rowsAlong(up, y, up.seenFrom)) {
      const top = bottom + up.face;
      const run = runWithin(up.seenFrom, across, top - up.sliver, top);
      slivers += Math.max(0, run - 2 - columnsTouched(field, bottom));
    }
  }
  if (!isFlat(up.seenTo)) {
    for (const bottom of rowsAlong(up, y, up.seenTo)) {
      const run = runWithin(up.seenTo, across, bottom, bottom + up.sliver);
      slivers += Math.max(0, run - 2 - columnsTouched(field, bottom));
    }
  }
  return slivers;
}

/** The bottoms of the courses that may meet a slope. */
function rowsAlong({ face, module }: Axis, y: Nm, { low, high }: Reach): Nm[] {
  const rows: Nm[] = [];
  const last = lastBefore(y, module, high);
  for (let k = firstPast(y, face, module, low); k <= last; k++) rows.push(y + k * module);
  return rows;
}

/** How many tiles, at least, meet the stretches in the clear where a chain runs between two levels. */
function runWithin({ chain }: Reach, along: Axis, from: Nm, to: Nm): number {
  const { clearLow, clearHigh, module } = along;
  let tiles = 0;
  let open = clearLow;
  let end = clearLow;
  const last = chain.at.length - 1;
  for (let i = 0; i <= last + 1; i++) {
    // Flat before the first point and beyond the last.
    const [a, b] = [i === 0 ? -Infinity : chain.at[i - 1]!, i > last ? Infinity : chain.at[i]!];
    const [va, vb] = [chain.value[Math.max(0, i - 1)]!, chain.value[Math.min(last, i)]!];
    const stretch = stretchWithin(a, b, va, vb, from, to);
    if (!stretch) continue;
    const low = Math.max(stretch[0], clearLow);
    const high = Math.min(stretch[1], clearHigh);
    if (low >= high) continue;
    if (low > end) {
      tiles += Math.floor((end - open) / module);
      open = low;
    }
    end = high;
  }
  return tiles + Math.floor((end - open) / module);
}

/** Where a straight piece of chain runs between two levels, drawn in by a nanometre for rounding. */
function stretchWithin(a: Nm, b: Nm, va: Nm, vb: Nm, from: Nm, to: Nm): readonly [Nm, Nm] | null {
  if (va === vb) return va > from && va < to ? [a, b] : null;
  const placeOf = (value: Nm) => a + ((b - a) * (value - va)) / (vb - va);
  const [p, r] = [placeOf(from + 1), placeOf(to - 1)];
  const low = Math.max(a, Math.min(p, r));
  const high = Math.min(b, Math.max(p, r));
  return low < high ? [low, high] : null;
}
