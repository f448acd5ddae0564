import { rounded } from "../picture.js";
import type { PictureBox } from "../scene.js";

/** The direction of a hatch's lines, as read from left to right. */
export type HatchRun = "rising" | "falling" | "level" | "upright";

/**
 * Path data of parallel lines over a box. They stand at whole steps from the wall's own origin, so
 * they stay where they are when a shape changes.
 */
export function hatchPath(run: HatchRun, spacing: number, box: PictureBox): string {
  const { left, right, top, bottom } = box;
  switch (run) {
    case "level":
      return steps(top, bottom, spacing, (y) => [left, y, right, y]);
    case "upright":
      return steps(left, right, spacing, (x) => [x, top, x, bottom]);
    // Slant lines lie `step` apart across themselves: sqrt 2 of it along an axis.
    case "rising":
      return steps(left + top, right + bottom, spacing * Math.SQRT2, (sum) => {
        const from = Math.max(left, sum - bottom);
        const to = Math.min(right, sum - top);
        return [from, sum - from, to, sum - to];
      });
    case "falling":
      return steps(left - bottom, right - top, spacing * Math.SQRT2, (difference) => {
        const from = Math.max(left, difference + top);
        const to = Math.min(right, difference + bottom);
        return [from, from - difference, to, to - difference];
      });
  }
}

function steps(
  from: number,
  to: number,
  step: number,
  lineAt: (at: number) => readonly [number, number, number, number],
): string {
  const parts: string[] = [];
  for (let n = Math.ceil(from / step); n * step <= to; n++) {
    const [x1, y1, x2, y2] = lineAt(n * step);
    parts.push(`M${rounded(x1)} ${rounded(y1)}L${rounded(x2)} ${rounded(y2)}`);
  }
  return parts.join("");
}
