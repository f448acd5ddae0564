import { formatLength, type Unit } from "../measure/index.js";
import type { Score } from "../solver/index.js";

/** What the measures of a layout are called, in the order in which they decide. */
export const MEASURE_NAMES: Readonly<Record<keyof Score, string>> = {
  slivers: "slivers",
  underHalf: "under half",
  imbalance: "out of balance",
  cuts: "cuts*",
  tiles: "tiles",
  jointOver: "joint over",
};

const LENGTHS: readonly (keyof Score)[] = ["imbalance", "jointOver"];

/** A measure's figure: a number of pieces, or a length. */
export function measureFigure(measure: keyof Score, score: Score, units: Unit): string {
  return LENGTHS.includes(measure) ? formatLength(score[measure], units) : `${score[measure]}`;
}
