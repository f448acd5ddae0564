/** An exact fraction: `denominator` is positive and the two have no common divisor. */
export interface Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/** Past this a fraction is no length that anybody measures, and sums of such would only grow. */
const LARGEST_TERM = 1n << 256n;

/** `numerator / denominator` in lowest terms; `denominator` must not be zero. */
export function fraction(numerator: bigint, denominator = 1n): Fraction {
  if (denominator === 1n) return { numerator, denominator };
  const divisor = greatestDivisor(numerator, denominator);
  const shrink = denominator < 0n ? -divisor : divisor;
  return { numerator: numerator / shrink, denominator: denominator / shrink };
}

export function add(a: Fraction, b: Fraction): Fraction {
  return fraction(
    a.numerator * b.denominator + b.numerator * a.denominator,
    a.denominator * b.denominator,
  );
}

export function negate(a: Fraction): Fraction {
  return { numerator: -a.numerator, denominator: a.denominator };
}

export function subtract(a: Fraction, b: Fraction): Fraction {
  return add(a, negate(b));
}

export function multiply(a: Fraction, b: Fraction): Fraction {
  return fraction(a.numerator * b.numerator, a.denominator * b.denominator);
}

/** `b` must not be zero. */
export function divide(a: Fraction, b: Fraction): Fraction {
  return fraction(a.numerator * b.denominator, a.denominator * b.numerator);
}

/** Whether sums with this fraction would get out of hand: its terms have more than 256 bits. */
export function isUnwieldy(a: Fraction): boolean {
  return a.numerator > LARGEST_TERM || a.numerator < -LARGEST_TERM || a.denominator > LARGEST_TERM;
}

/** The nearest whole number, halves away from zero. */
export function roundToWhole({ numerator, denominator }: Fraction): bigint {
  const twice = 2n * denominator;
  return numerator < 0n
    ? -((-2n * numerator + denominator) / twice)
    : (2n * numerator + denominator) / twice;
}

function greatestDivisor(a: bigint, b: bigint): bigint {
  let large = a < 0n ? -a : a;
  let small = b < 0n ? -b : b;
  while (small !== 0n) [large, small] = [small, large % small];
  return large;
}
