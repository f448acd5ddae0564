import { divideRounded, exactLength, NM_PER, type Nm, type Unit } from "../measure/index.js";
import type { SolvedLay } from "../solver/index.js";

/** The spacers that there are differ by so much: common practice. */
const STEP = { inch: NM_PER.inch / 64, metric: NM_PER.mm / 2 } as const;

/**
 * `nearest spacers 5/64 in`, where the solver chose a joint out of a range that is as wide as no spacer; null where it is one's
 * width, is under half of the least one's, or was not chosen.
 */
export function spacerWords({ joint, choice }: SolvedLay, unit: Unit): string | null {
  const isInches = unit === "inch" || unit === "foot";
  const step = isInches ? STEP.inch : STEP.metric;
  const nearest = divideRounded(joint, step) * step;
  if (!choice?.left.includes("joint") || joint === nearest || nearest === 0) return null;
  const told = isInches ? `${exactLength(nearest, "inch")} in` : millimetres(nearest);
  return `nearest spacers ${told}`;
}

/** `exactly 2.017059 mm, nearest spacers 5/64 in`: what to set a chosen joint with, beside its figure for people. */
export function exactJointWords(lay: SolvedLay, unit: Unit): string | null {
  const spacers = spacerWords(lay, unit);
  return spacers && `exactly ${millimetres(lay.joint)}, ${spacers}`;
}

function millimetres(nm: Nm): string {
  return `${exactLength(nm, "mm")} mm`;
}
