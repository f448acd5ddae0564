import type { Fraction } from "../../measure/index.js";

/** Ratios with larger terms are no bond and no limit, and the solver counts up to them. */
const LARGEST_TERM = 1000n;

/** A fraction as plain numbers in lowest terms, or null when they are over 1000. */
export function ratioOf({ numerator, denominator }: Fraction): { p: number; q: number } | null {
  if (numerator > LARGEST_TERM || numerator < -LARGEST_TERM || denominator > LARGEST_TERM) {
    return null;
  }
  return { p: Number(numerator), q: Number(denominator) };
}
