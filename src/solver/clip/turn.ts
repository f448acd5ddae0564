/**
 * The sign of ax x by - ay x bx: positive when b lies to the left of a. Exact: the difference of
 * two rounded products is taken only where their size proves its sign, whole numbers elsewhere.
 */
export function crossSign(ax: number, ay: number, bx: number, by: number): number {
  const l = ax * by;
  const r = ay * bx;
  const difference = l - r;
  if (Number.isSafeInteger(l) && Number.isSafeInteger(r)) return Math.sign(difference);
  // Each product is off by at most half a unit in its last place, 2^-53 of itself.
  const doubt = (Math.abs(l) + Math.abs(r)) * 2 ** -51;
  if (Math.abs(difference) > doubt) return Math.sign(difference);
  const exact = BigInt(ax) * BigInt(by) - BigInt(ay) * BigInt(bx);
  return exact > 0n ? 1 : exact < 0n ? -1 : 0;
}
