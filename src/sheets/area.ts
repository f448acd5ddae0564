/** Twice this many square nanometres are one square millimetre. */
const DOUBLED_IN_MM2 = 2_000_000_000_000n;
const DECIMALS = 13;

/**
 * Square millimetres, as a JSON number, of an area given doubled in square nanometres: every decimal
 * is written, so that nothing is lost before the reader rounds it.
 */
export function squareMillimetres(doubled: bigint): string {
  if (doubled < 0n) return `-${squareMillimetres(-doubled)}`;
  const whole = doubled / DOUBLED_IN_MM2;
  const rest = doubled % DOUBLED_IN_MM2;
  if (rest === 0n) return whole.toString();
  // Half a square nanometre is the 13th decimal.
  const decimals = (rest * 5n).toString().padStart(DECIMALS, "0").replace(/0+$/, "");
  return `${whole}.${decimals}`;
}
