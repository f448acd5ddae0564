import type { Score } from "../solved.js";

/** The measures of a score in the order in which they count. */
export const MEASURES = [
  "slivers",
  "underHalf",
  "imbalance",
  "cuts",
  "tiles",
  "jointOver",
] as const satisfies readonly (keyof Score)[];

/**
 * Negative when `a` is the better score, 0 when they are equal. To lay nothing at all is the worst,
 * for a wall narrower than a joint could be left bare without a sliver.
 */
export function compareScores(a: Score, b: Score): number {
  return (
    Number(a.tiles === 0) - Number(b.tiles === 0) ||
    a.slivers - b.slivers ||
    a.underHalf - b.underHalf ||
    a.imbalance - b.imbalance ||
    a.cuts - b.cuts ||
    a.tiles - b.tiles ||
    a.jointOver - b.jointOver
  );
}

/** The first measure on which two scores differ, or null when they are equal. */
export function firstDifference(a: Score, b: Score): keyof Score | null {
  return MEASURES.find((measure) => a[measure] !== b[measure]) ?? null;
}
