import type { Nm } from "../../measure/index.js";

/** Twice this many cubic nanometres are one mm³. */
const DOUBLED_IN_MM3 = 2_000_000_000_000_000_000n;

/** One part of a volume: twice an area in nm², and how thick it is. */
export interface Layer {
  readonly doubleArea: bigint;
  readonly thickness: Nm;
}

/** Whole mm³ of all layers together, rounded up once. */
export function volumeOf(layers: readonly Layer[]): number {
  const doubled = layers.reduce(
    (sum, { doubleArea, thickness }) => sum + doubleArea * BigInt(thickness),
    0n,
  );
  return Number(ceilDivide(doubled, DOUBLED_IN_MM3));
}

/** Of zero or more by more than zero. */
export function ceilDivide(a: bigint, b: bigint): bigint {
  return (a + b - 1n) / b;
}
