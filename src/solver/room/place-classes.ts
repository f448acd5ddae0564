import type { Nm } from "../../measure/index.js";
import type { Axis, Field } from "../choose/field.js";
import { firstPast, lastBefore } from "../lattice.js";

/** A stretch that an opening takes in one direction. */
export interface Taken {
  readonly from: Nm;
  readonly to: Nm;
}

/**
 * How a stretch cuts a row of tiles: places of one class leave as many pieces, of which as many are too
 * small. `fields` hold the sizes that are too small, each in its way. Where the wall's ends may cut the
 * tiles too, it tells which tiles they are.
 */
export function classOf(
  origin: Nm,
  { from, to }: Taken,
  axis: "across" | "up",
  fields: readonly Field[],
  hasEnds: boolean,
): string {
  const { face, module, low, high, clearLow, clearHigh } = fields[0]![axis];
  const first = firstPast(origin, face, module, from);
  const last = lastBefore(origin, module, to);
  const [start, end] = [origin + first * module, origin + last * module + face];
  if (!hasEnds) return `${last - first}${classes([from - start, end - to], axis, fields)}`;
  const sizes = [
    from - Math.max(start, low),
    from - Math.max(start, clearLow),
    Math.min(end, high) - to,
    Math.min(end, clearHigh) - to,
  ];
  return `${first} ${last}${classes(sizes, axis, fields)}`;
}

/** The classes of sizes, one after the other. */
function classes(sizes: readonly Nm[], axis: "across" | "up", fields: readonly Field[]): string {
  let told = "";
  for (const size of sizes) {
    told += " ";
    for (const field of fields) told += `${sizeClass(size, field[axis])}`;
  }
  return told;
}

/** Nothing, a sliver, under half, or enough. */
function sizeClass(size: Nm, { sliver, half }: Axis): number {
  if (size <= 0) return 0;
  return size < sliver ? 1 : size < half ? 2 : 3;
}
