import type { PlanComparison } from "../../service/index.js";

/**
 * What is shown once a comparison came in: one whose text could not be understood whole leaves the
 * one before standing, where there is one.
 */
export function withComparison(
  shown: PlanComparison | null,
  comparison: PlanComparison,
): PlanComparison {
  return !comparison.whole && shown ? shown : comparison;
}

/** The note over the picture, or null when there is nothing to say. */
export function noteOf(latest: PlanComparison | null): string | null {
  if (!latest) return null;
  const notes = [
    ...(latest.whole
      ? []
      : ["Part of the text could not be understood: what could be before is shown."]),
    ...(latest.oldWhole
      ? []
      : ["Part of the text before could not be understood: what could be is compared."]),
    ...(latest.wall !== null && latest.picture === null
      ? ["This wall is too large to be drawn piece by piece: what changed is told in words."]
      : []),
  ];
  return notes.length > 0 ? notes.join(" ") : null;
}
