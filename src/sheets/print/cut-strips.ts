import type { Pole, PoleMark } from "../paper/paper.js";
import { POINTS_PER_INCH } from "./paper-size.js";

/** How far a strip lies over the one before it: half an inch. */
export const OVERLAP = 36;

/** More strips than this nobody tapes together: a mistyped length would print for days. */
export const MOST_STRIPS = 120;

/** A part of a story pole in true size. Places are points up from the strip's foot. */
export interface Strip {
  /** From 1. */
  readonly number: number;
  readonly of: number;
  readonly length: number;
  readonly marks: readonly StripMark[];
}

export interface StripMark {
  readonly up: number;
  readonly mark: PoleMark;
}

const NM_PER_INCH = 25_400_000;

/** Nanometres in points of paper, in true size. */
export function truePoints(nm: number): number {
  return (nm * POINTS_PER_INCH) / NM_PER_INCH;
}

/**
 * The pole in strips no longer than `most` points, each of which lies over the end of the one before.
 * A mark where two lie over each other stands on both.
 */
export function cutStrips(pole: Pole, most: number): Strip[] {
  const whole = truePoints(pole.to - pole.from);
  const step = most - OVERLAP;
  const count = Math.max(1, Math.ceil((whole - OVERLAP) / step));
  if (count > MOST_STRIPS) return [];
  const placed = pole.marks.map((mark) => ({ up: truePoints(mark.at - pole.from), mark }));
  return Array.from({ length: count }, (_, i) => {
    const foot = i * step;
    const length = Math.min(most, whole - foot);
    const marks = placed
      .filter(({ up }) => up >= foot && up <= foot + length)
      .map(({ up, mark }) => ({ up: up - foot, mark }));
    return { number: i + 1, of: count, length, marks };
  });
}
