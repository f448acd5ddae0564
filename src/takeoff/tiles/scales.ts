import type { Nm } from "../../measure/index.js";

/** How much is weighed for a bound, in kinds of pieces times ways to count them. */
export const EFFORT = 20_000;

/**
 * A size as it counts in a bound: what leaves less than `least` beside it fills the whole length, and
 * what is smaller than `least` counts for nothing. However sizes fill a length, counted so they still
 * fit it (a dual feasible function: Fekete and Schepers, "New classes of fast lower bounds for bin
 * packing problems", 2001). `least` is at most half the length.
 */
export function counted(size: Nm, length: Nm, least: Nm): Nm {
  if (size > length - least) return length;
  return size < least ? 0 : size;
}

/**
 * The values of `least` where what some size counts for changes, at most `most` of them spread evenly;
 * 0, which counts every size as it is, always comes first.
 */
export function thresholds(sizes: Iterable<Nm>, length: Nm, most: number): Nm[] {
  const all = new Set<Nm>();
  for (const size of sizes) {
    const least = 2 * size <= length ? size : length - size + 1;
    if (2 * least <= length) all.add(least);
  }
  all.delete(0);
  const sorted = [...all].sort((a, b) => a - b);
  const step = Math.max(1, sorted.length / most);
  const spread: Nm[] = [0];
  for (let k = 0; k < sorted.length; k += step) spread.push(sorted[Math.floor(k)]!);
  return spread;
}
