import { mixedNumber } from "./format-length.js";
import type { Nm, Unit } from "./nanometre.js";
import { NM_PER } from "./nanometre.js";

/** 1/64 in is a whole number of nanometres; 1/128 in is not. */
const SIXTY_FOURTHS = 64;
const NM_PER_64TH = NM_PER.inch / SIXTY_FOURTHS;
/** An inch holds the prime 127 (25,400,000 = 127 x 200,000), so only its multiples are decimals. */
const NM_PER_DECIMAL_INCH = 127;
/** 127 nm is 0.000005 in. */
const INCH_STEPS = 200_000;
const INCH_DECIMALS = 6;

/**
 * A length as it is written into a plan of that unit: reading it back gives the same nanometres.
 * Inches as a fraction down to 1/64, else as a decimal; where the unit can't say it exactly,
 * millimetres with their unit. A negative length starts with `-`.
 */
export function exactLength(nm: Nm, unit: Unit): string {
  const sign = nm < 0 ? "-" : "";
  const size = Math.abs(nm);
  return sign + (isImperial(unit) ? exactImperial(size, unit) : exactDecimal(size, NM_PER[unit]));
}

function isImperial(unit: Unit): unit is "inch" | "foot" {
  return unit === "inch" || unit === "foot";
}

function exactImperial(size: Nm, unit: "inch" | "foot"): string {
  const feet = unit === "foot" ? Math.floor(size / NM_PER.foot) : 0;
  const rest = size - feet * NM_PER.foot;
  if (unit === "foot" && rest === 0) return `${feet}`;
  const inches = exactInches(rest);
  if (inches === null) return `${exactDecimal(size, NM_PER.mm)}mm`;
  if (unit === "inch") return inches;
  return feet === 0 ? `${inches}"` : `${feet}' ${inches}"`;
}

function exactInches(size: Nm): string | null {
  if (size % NM_PER_64TH === 0) return mixedNumber(size / NM_PER_64TH, SIXTY_FOURTHS);
  if (size % NM_PER_DECIMAL_INCH !== 0) return null;
  const steps = size / NM_PER_DECIMAL_INCH;
  const whole = Math.floor(steps / INCH_STEPS);
  const millionths = (steps % INCH_STEPS) * (10 ** INCH_DECIMALS / INCH_STEPS);
  return joinDecimal(whole, millionths, INCH_DECIMALS);
}

/** Exact, since a metric unit is a power of ten of nanometres. */
function exactDecimal(size: Nm, perUnit: Nm): string {
  const decimals = `${perUnit}`.length - 1;
  return joinDecimal(Math.floor(size / perUnit), size % perUnit, decimals);
}

function joinDecimal(whole: number, rest: number, decimals: number): string {
  if (rest === 0) return `${whole}`;
  return `${whole}.${`${rest}`.padStart(decimals, "0").replace(/0+$/, "")}`;
}
