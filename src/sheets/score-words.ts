import { formatLength, type Unit } from "../measure/index.js";
import type { Score } from "../solver/index.js";

/** The measures of a layout in the order in which they decide. */
const MEASURES: readonly (keyof Score)[] = [
  "slivers",
  "underHalf",
  "imbalance",
  "cuts",
  "tiles",
  "jointOver",
];

/** One measure with its figure: `2 slivers`, `ends differ by 1/8 in`. */
export function measureWords(measure: keyof Score, score: Score, units: Unit): string {
  const count = score[measure];
  const length = (): string => formatLength(count, units);
  switch (measure) {
    case "slivers":
      return count === 1 ? "1 sliver" : `${count} slivers`;
    case "underHalf":
      return `${count} under half`;
    case "imbalance":
      return `ends ${length()} out of balance`;
    case "cuts":
      return `${count} cuts, notches twice`;
    case "tiles":
      return `${count} tiles`;
    case "jointOver":
      return `joint ${length()} over its least`;
  }
}

/** All measures of a layout, in the order in which they decide. */
export function scoreWords(score: Score, units: Unit): string {
  return MEASURES.map((measure) => measureWords(measure, score, units)).join(", ");
}
