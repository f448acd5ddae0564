import type { Table } from "../paper/paper.js";
import type { Weight } from "./sheet.js";
import { BREAKS } from "./wrap-lines.js";

/** A short table is not torn apart to the sheet's whole width: a column grows by this much at most. */
const MOST_GROWTH = 30;

/** Into how many steps the width is parted while columns bargain for it, and how often they do at most. */
const STEPS = 96;
/** A column may have to give much before a line is saved. */
const AT_ONCE = [1, 4, 10];
const MOST_TURNS = 100;

/** Of a longer table, so many rows are looked at. */
const MOST_ROWS = 400;

/**
 * How wide each column is, so that the table fits in `width`: as wide as its longest cell where there
 * is room for all; else so that the table has about as few lines as can be; and where not even words
 * fit, they are broken. `measure` gives a cell's width with its white.
 */
export function columnWidths(
  table: Table,
  width: number,
  measure: (text: string, weight: Weight) => number,
): number[] {
  const { columns, rows } = table;
  const cells = [
    columns.map(({ title }) => measure(title, "bold")),
    ...rows.slice(0, MOST_ROWS).map((row) => row.map((cell) => measure(cell, "regular"))),
  ];
  const wanted = columns.map((_, i) => Math.max(...cells.map((row) => row[i] ?? 0)));
  const total = sum(wanted);
  if (total <= width) {
    const growth = Math.min(MOST_GROWTH, (width - total) / wanted.length);
    return wanted.map((each) => each + growth);
  }
  const least = columns.map(({ title }, i) =>
    Math.max(
      longestWord(title, (word) => measure(word, "bold")),
      ...rows.map((row) => longestWord(row[i] ?? "", (word) => measure(word, "regular"))),
    ),
  );
  const tight = sum(least);
  if (tight >= width) return least.map((each) => (each * width) / tight);
  const share = (width - tight) / (total - tight);
  return bargained(
    least.map((each, i) => each + (wanted[i]! - each) * share),
    least,
    cells,
  );
}

/** One column gives some of its width to another as long as the table becomes shorter by it. */
function bargained(
  start: readonly number[],
  least: readonly number[],
  cells: readonly (readonly number[])[],
): number[] {
  const step = sum(start) / STEPS;
  let widths = [...start];
  let best = linesOf(cells, widths);
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    let next: number[] | null = null;
    for (const tried of exchanges(widths, least, step)) {
      const lines = linesOf(cells, tried);
      if (lines >= best) continue;
      best = lines;
      next = tried;
    }
    if (!next) break;
    widths = next;
  }
  return widths;
}

/** Every way in which one column gives some steps, or what it can spare, to another. */
function* exchanges(
  widths: readonly number[],
  least: readonly number[],
  step: number,
): Generator<number[]> {
  for (let from = 0; from < widths.length; from++) {
    for (let to = 0; to < widths.length; to++) {
      for (const steps of to === from ? [] : AT_ONCE) {
        const spared = Math.min(steps * step, widths[from]! - least[from]!);
        if (spared <= 0) continue;
        const tried = [...widths];
        tried[from]! -= spared;
        tried[to]! += spared;
        yield tried;
      }
    }
  }
}

/**
 * How long the table is: a row has as many lines as its longest cell. Lines are reckoned by their length
 * alone, and what all cells have over one line counts a little, so that there is a way downhill.
 */
function linesOf(cells: readonly (readonly number[])[], widths: readonly number[]): number {
  let lines = 0;
  for (const row of cells) {
    let most = 1;
    for (let i = 0; i < row.length; i++) most = Math.max(most, row[i]! / widths[i]!);
    lines += Math.ceil(most) + most / row.length;
  }
  return lines;
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
