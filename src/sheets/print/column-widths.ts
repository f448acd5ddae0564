import type { Table } from "../paper/paper.js";
import type { Weight } from "./sheet.js";
import { BREAKS } from "./wrap-lines.js";

/** A short table is not torn apart to the sheet's whole width: a column grows by this much at most. */
const MOST_GROWTH = 30;

/**
 * How wide each column is, so that the table fits in `width`: as wide as its longest cell where there
 * is room for all; else the columns that want less than their share keep what they want, and the
 * others share the rest; at last words are broken. `measure` gives a cell's width with its white.
 */
export function columnWidths(
  table: Table,
  width: number,
  measure: (text: string, weight: Weight) => number,
): number[] {
  const wanted = table.columns.map(({ title }, i) =>
    Math.max(
      measure(title, "bold"),
      ...table.rows.map((cells) => measure(cells[i] ?? "", "regular")),
    ),
  );
  const total = sum(wanted);
  if (total <= width) {
    const growth = Math.min(MOST_GROWTH, (width - total) / wanted.length);
    return wanted.map((each) => each + growth);
  }
  const least = table.columns.map(({ title }, i) =>
    Math.max(
      longestWord(title, (word) => measure(word, "bold")),
      ...table.rows.map((cells) => longestWord(cells[i] ?? "", (word) => measure(word, "regular"))),
    ),
  );
  const tight = sum(least);
  if (tight >= width) return least.map((each) => (each * width) / tight);
  return sharedOut(wanted, least, width);
}

/** Every column has its longest word; what is over goes to all alike, but to none more than it wants. */
function sharedOut(wanted: readonly number[], least: readonly number[], width: number): number[] {
  const widths = [...least];
  let over = width - sum(least);
  let open = wanted.map((_, i) => i).filter((i) => widths[i]! < wanted[i]!);
  while (open.length > 0) {
    // Up to where the next column has all it wants, or to where nothing is over.
    const nearest = Math.min(...open.map((i) => wanted[i]! - widths[i]!));
    const step = Math.min(nearest, over / open.length);
    const stillOpen = open.filter((i) => wanted[i]! - widths[i]! > nearest);
    for (const i of open) widths[i]! += step;
    over -= step * open.length;
    open = step < nearest ? [] : stillOpen;
  }
  return widths;
}

function longestWord(text: string, measure: (word: string) => number): number {
  return Math.max(
    ...text
      .split("\n")
      .flatMap((line) => line.trim().split(BREAKS))
      .map(measure),
  );
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0);
}
