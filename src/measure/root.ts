/**
 * The square root of `numerator / denominator` rounded once to the nearest whole number, halves up;
 * exact at any size. Both must be positive, but the numerator may be zero.
 */
export function rootRounded(numerator: bigint, denominator = 1n): number {
  // n is nearest where (2n - 1)² <= 4 x numerator / denominator < (2n + 1)².
  return Number((floorRoot((4n * numerator) / denominator) + 1n) / 2n);
}

/** Newton's steps from above; the first guess of a root in floating point is close, and then raised. */
function floorRoot(square: bigint): bigint {
  if (square < 2n) return square;
  let root = BigInt(Math.ceil(Math.sqrt(Number(square)))) + 1n;
  while (root * root < square) root *= 2n;
  for (;;) {
    const next = (root + square / root) / 2n;
    if (next >= root) return root;
    root = next;
  }
}

/** The smallest whole number whose square is at least `square`, which is not negative; exact at any size. */
export function rootRaised(square: bigint): bigint {
  const root = floorRoot(square);
  return root * root === square ? root : root + 1n;
}
