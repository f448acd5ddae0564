import type { PieceIndex } from "./piece-index.js";

export type Step = "left" | "right" | "up" | "down" | "first" | "last";

/** The piece that a step leads to; the same where there is none further. */
export function walk(index: PieceIndex, from: number, step: Step): number {
  if (index.count === 0) return -1;
  if (from < 0 || from >= index.count) return 0;
  const row = rowOf(index, from);
  const [first, last] = [index.courseStart[row]!, index.courseStart[row + 1]! - 1];
  switch (step) {
    case "left":
      return Math.max(first, from - 1);
    case "right":
      return Math.min(last, from + 1);
    case "first":
      return first;
    case "last":
      return last;
    case "up":
      return across(index, from, row + 1);
    case "down":
      return across(index, from, row - 1);
  }
}

/** The piece of a row that stands over or under the middle of `from`, or comes nearest to it. */
function across(index: PieceIndex, from: number, row: number): number {
  if (row < 0 || row >= index.courseStart.length - 1) return from;
  const middle = middleOf(index, from);
  let best = from;
  let least = Infinity;
  for (let i = index.courseStart[row]!; i < index.courseStart[row + 1]!; i++) {
    const away = Math.abs(middleOf(index, i) - middle);
    if (away < least) [best, least] = [i, away];
  }
  return best;
}

function middleOf({ bounds }: PieceIndex, i: number): number {
  return (bounds[4 * i]! + bounds[4 * i + 2]!) / 2;
}

function rowOf({ courseStart }: PieceIndex, i: number): number {
  let [low, high] = [0, courseStart.length - 2];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (courseStart[middle]! <= i) low = middle;
    else high = middle - 1;
  }
  return low;
}
