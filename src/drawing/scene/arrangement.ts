import type { Wall } from "../../model/index.js";
import { rounded } from "../picture.js";

/** How the walls of a plan stand in the picture, and how large its text is. */
export interface Arrangement {
  /** How many walls stand in each row, in the plan's order. */
  readonly rows: readonly number[];
  /** The height of ordinary text, in picture millimetres. */
  readonly em: number;
}

/** Preferred numbers (ISO 3, R20): text sizes step by these, so a small change of a wall leaves them. */
const R20 = [
  1, 1.12, 1.25, 1.4, 1.6, 1.8, 2, 2.24, 2.5, 2.8, 3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10,
];

/** Text is readable on a page or a screen that is no more than this many times as wide, or as high. */
const EMS_ACROSS = 155;
const EMS_UP = 82;
/** What stands beside each wall, and over and under each row. */
const EMS_BESIDE = 26;
const EMS_OVER = 20;
/** However many walls there are, this much is left for them. */
const LEAST_EMS = 20;
const MOST_ROWS = 6;
const EM_WITHOUT_WALLS = 10;

/** The arrangement in which the walls are seen largest, with text that can be read. */
export function arrange(walls: readonly Wall[]): Arrangement {
  if (walls.length === 0) return { rows: [], em: EM_WITHOUT_WALLS };
  const sizes = walls.map(({ size }) => ({ across: size.across / 1e6, up: size.up / 1e6 }));
  let best = weigh(sizes, 1);
  for (let rows = 2; rows <= Math.min(MOST_ROWS, walls.length); rows++) {
    const next = weigh(sizes, rows);
    if (next.extent < best.extent) best = next;
  }
  return { rows: best.rows, em: best.em };
}

interface Size {
  readonly across: number;
  readonly up: number;
}

/** So many rows: their text, and how large the whole picture would be. */
function weigh(sizes: readonly Size[], count: number): Arrangement & { readonly extent: number } {
  const rows = intoRows(sizes, count);
  const up = rows.reduce((sum, row) => sum + Math.max(...row.map((size) => size.up)), 0);
  const em = preferred(
    Math.max(
      ...rows.map((row) => acrossOf(row) / Math.max(LEAST_EMS, EMS_ACROSS - besideOf(row))),
      up / Math.max(LEAST_EMS, EMS_UP - EMS_OVER * rows.length),
    ),
  );
  const extent = Math.max(
    ...rows.map((row) => (acrossOf(row) + besideOf(row) * em) / EMS_ACROSS),
    (up + EMS_OVER * rows.length * em) / EMS_UP,
  );
  return { rows: rows.map((row) => row.length), em, extent };
}

function acrossOf(row: readonly Size[]): number {
  return row.reduce((sum, size) => sum + size.across, 0);
}

function besideOf(row: readonly Size[]): number {
  return EMS_BESIDE * row.length;
}

/** A first guess at a row's text, before it is known how many rows there are. */
const EMS_OF_A_WALL = 40;

/** The walls in rows, in order, so that the widest row is as narrow as it can be. */
function intoRows(sizes: readonly Size[], count: number): Size[][] {
  const beside = (EMS_BESIDE * Math.max(0, ...sizes.map((size) => size.up))) / EMS_OF_A_WALL;
  let low = Math.max(0, ...sizes.map((size) => size.across)) + beside;
  let high = acrossOf(sizes) + beside * sizes.length;
  // To the millimetre is enough: rows are only looked at.
  while (high - low > 1) {
    const middle = (low + high) / 2;
    if (filled(sizes, beside, middle).length <= count) high = middle;
    else low = middle;
  }
  return filled(sizes, beside, high + 1);
}

/** Rows filled one after the other, none wider than `most`. */
function filled(sizes: readonly Size[], beside: number, most: number): Size[][] {
  const rows: Size[][] = [];
  let across = Infinity;
  for (const size of sizes) {
    across += size.across + beside;
    if (across > most) {
      rows.push([]);
      across = size.across + beside;
    }
    rows.at(-1)!.push(size);
  }
  return rows;
}

/** The smallest preferred number that is no less, from a thousandth up. */
export function preferred(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(Math.max(value, 0.001)));
  const step = R20.find((each) => each * decade >= value) ?? 10;
  return rounded(step * decade);
}
