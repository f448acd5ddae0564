/** A length in whole nanometres. Safe in a JS number to 9,007 km, so no tolerance is ever needed. */
export type Nm = number;

/** The units a plan may be written in. */
export type Unit = "inch" | "mm" | "cm" | "m" | "foot";

/** Whole nanometres in one of each unit; all exact. */
export const NM_PER: Readonly<Record<Unit, Nm>> = {
  inch: 25_400_000,
  mm: 1_000_000,
  cm: 10_000_000,
  m: 1_000_000_000,
  foot: 304_800_000,
};

/** The longest length a plan may state, 10 km: past it nothing is a wall, and sums stay exact. */
export const LONGEST: Nm = 10_000 * NM_PER.m;

/** Millimetres for JSON: exact to the nanometre, six decimals at most. */
export function toMillimetres(nm: Nm): number {
  return nm / 1_000_000;
}

/** `numerator / denominator` rounded once to the nearest whole number, halves away from zero. */
export function divideRounded(numerator: number, denominator: number): number {
  const quotient = numerator / denominator;
  return quotient < 0 ? -Math.round(-quotient) : Math.round(quotient);
}

/** `a x b / c` rounded once to the nearest whole number, halves away from zero; exact at any size. */
export function scaleRounded(a: number, b: number, c: number): number {
  const product = a * b;
  if (Number.isSafeInteger(product)) return divideRounded(product, c);
  const [n, d] = [BigInt(a) * BigInt(b), BigInt(c)];
  const negative = n < 0n !== d < 0n;
  const [top, bottom] = [n < 0n ? -n : n, d < 0n ? -d : d];
  const rounded = Number((2n * top + bottom) / (2n * bottom));
  return negative ? -rounded : rounded;
}
