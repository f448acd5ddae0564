import assert from "node:assert/strict";
import type { Box } from "../../src/solver/index.js";

/**
 * Checks that a saw can part these boxes: that a cut as wide as the kerf goes between them from edge to
 * edge, and so on with both parts, until every box is on its own.
 */
export function checkGuillotine(boxes: readonly Box[], kerf: number, told: string): void {
  if (boxes.length < 2) return;
  const parts =
    partedAlong(boxes, kerf, "left", "right") ?? partedAlong(boxes, kerf, "bottom", "top");
  assert.ok(parts, `no cut goes from edge to edge: ${JSON.stringify(boxes)}, ${told}`);
  for (const part of parts) checkGuillotine(part, kerf, told);
}

/** The boxes before and behind the first gap that is as wide as the kerf, or null. */
function partedAlong(
  boxes: readonly Box[],
  kerf: number,
  low: "left" | "bottom",
  high: "right" | "top",
): readonly [Box[], Box[]] | null {
  const sorted = [...boxes].sort((a, b) => a[low] - b[low]);
  let reach = sorted[0]![high];
  for (let k = 1; k < sorted.length; k++) {
    if (sorted[k]![low] - reach >= kerf) return [sorted.slice(0, k), sorted.slice(k)];
    reach = Math.max(reach, sorted[k]![high]);
  }
  return null;
}
