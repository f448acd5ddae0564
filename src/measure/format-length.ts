import type { Nm, Unit } from "./nanometre.js";
import { divideRounded, NM_PER } from "./nanometre.js";

/** The finest division of an inch that people are shown: 1/32 in. */
const THIRTY_SECONDS = 32;
const NM_PER_32ND = NM_PER.inch / THIRTY_SECONDS;
const INCHES_PER_FOOT = 12;

/** Of the metric units: the step that people are shown, in nm, and the decimals it needs. */
const METRIC_STEP: Readonly<Record<"mm" | "cm" | "m", { step: Nm; decimals: number }>> = {
  mm: { step: 100_000, decimals: 1 },
  cm: { step: 100_000, decimals: 2 },
  m: { step: 100_000, decimals: 4 },
};

/**
 * A length for people, in the plan's own unit: `5 7/8 in`, `5' 3 7/8"`, `149.2 mm`, `14.92 cm`,
 * `0.1492 m`. Inches are rounded to the nearest 1/32; a `+` or `-` behind them says that the true
 * length is a little more or a little less, as setters write it (common practice). Metric units
 * are rounded to 0.1 mm.
 */
export function formatLength(nm: Nm, unit: Unit): string {
  const sign = nm < 0 ? "-" : "";
  const size = Math.abs(nm);
  if (unit === "inch") return formatInches(size, sign);
  if (unit === "foot") return formatFeet(size, sign);
  const { step, decimals } = METRIC_STEP[unit];
  const shown = (divideRounded(size, step) * step) / NM_PER[unit];
  return `${shown === 0 ? "" : sign}${trimZeros(shown.toFixed(decimals))} ${unit}`;
}

function formatInches(size: Nm, sign: string): string {
  const parts = divideRounded(size, NM_PER_32ND);
  const rest = roundingMark(size, parts);
  return `${parts === 0 ? "" : sign}${mixedNumber(parts, THIRTY_SECONDS)}${rest} in`;
}

function formatFeet(size: Nm, sign: string): string {
  const parts = divideRounded(size, NM_PER_32ND);
  const partsPerFoot = INCHES_PER_FOOT * THIRTY_SECONDS;
  const feet = Math.floor(parts / partsPerFoot);
  const rest = parts % partsPerFoot;
  const mark = roundingMark(size, parts);
  const shownSign = parts === 0 ? "" : sign;
  if (rest === 0 && mark === "" && feet > 0) return `${shownSign}${feet}'`;
  const inches = `${mixedNumber(rest, THIRTY_SECONDS)}${mark}"`;
  return feet === 0 ? `${shownSign}${inches}` : `${shownSign}${feet}' ${inches}`;
}

function roundingMark(size: Nm, parts: number): string {
  const shown = parts * NM_PER_32ND;
  if (size === shown) return "";
  return size > shown ? "+" : "-";
}

/** `parts / perWhole` as a whole number and a reduced fraction; `perWhole` is a power of two. */
export function mixedNumber(parts: number, perWhole: number): string {
  const whole = Math.floor(parts / perWhole);
  let over = parts % perWhole;
  let under = perWhole;
  if (over === 0) return `${whole}`;
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}

function trimZeros(decimal: string): string {
  return decimal.includes(".") ? decimal.replace(/\.?0+$/, "") : decimal;
}
