import { formatLength, type Nm } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import { type LaidOption, MEASURES } from "../../solver/index.js";
import { aligned } from "../aligned.js";
import { MEASURE_NAMES, measureFigure } from "../measure-words.js";
import { LINE_WIDTH } from "./line-width.js";
import { optionFigures, type OptionFigures } from "./option-figures.js";
import { optionLetter } from "./option-letter.js";

const INDENT = "    ";

/** Of a long bond, no more courses' ends are told. */
const MOST_ENDS = 4;

/** A row of the table: what is told, and of each option. */
export type Row = readonly string[];

/** The options' figures side by side, in as many tables as the width asks for. */
export function* optionTables(plan: Plan, options: readonly LaidOption[]): Generator<string> {
  const figures = options.map((option) => optionFigures(plan, option));
  const rows = [
    ["", ...options.map((_, i) => optionLetter(i))],
    ...scoreRows(plan, options),
    ...figureRows(plan, options, figures),
  ];
  yield* columnTables(rows);
  yield `${INDENT}* a notched piece counts twice   ** for this wall alone, its offcuts used again\n`;
}

/** Rows of which each begins with its name, in as many tables as the width asks for. */
export function* columnTables(rows: readonly Row[]): Generator<string> {
  for (const part of partsOf(rows)) {
    yield "\n";
    for (const line of aligned(part)) yield `${INDENT}${line}\n`;
  }
}

/** In the order in which they decide; the joint only where it is not the same for all. */
function scoreRows({ units }: Plan, options: readonly LaidOption[]): Row[] {
  return MEASURES.filter(
    (measure) => measure !== "jointOver" || options.some(({ score }) => score.jointOver > 0),
  ).map((measure) => [
    measure === "tiles" ? "tiles begun" : MEASURE_NAMES[measure],
    ...options.map(({ score }) => measureFigure(measure, score, units)),
  ]);
}

function figureRows(
  { units }: Plan,
  options: readonly LaidOption[],
  figures: readonly OptionFigures[],
): Row[] {
  const length = (nm: Nm | undefined): string => (nm === undefined ? "-" : formatLength(nm, units));
  const courses = Math.min(MOST_ENDS, ...options.map(({ ends }) => ends.left.length));
  const ends = Array.from({ length: courses }, (_, i) => {
    const name = courses === 1 ? "" : `, course ${i + 1}`;
    return [
      [`left end${name}`, ...options.map(({ ends: { left } }) => length(left[i]))],
      [`right end${name}`, ...options.map(({ ends: { right } }) => length(right[i]))],
    ];
  });
  return [
    ["smallest cut: width", ...figures.map(({ smallest }) => length(smallest?.width))],
    ["smallest cut: height", ...figures.map(({ smallest }) => length(smallest?.height))],
    ...ends.flat(),
    ["bottom course", ...options.map(({ ends: { bottom } }) => length(bottom))],
    ["top course", ...options.map(({ ends: { top } }) => length(top))],
    ["cut pieces", ...figures.map(({ cutPieces }) => `${cutPieces}`)],
    ["tiles needed**", ...figures.map(({ tilesNeeded }) => `${tilesNeeded}`)],
  ];
}

/** The table cut into stretches of columns that fit the width; each begins with the names of its rows. */
function partsOf(rows: readonly Row[]): Row[][] {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  const parts: number[][] = [];
  let width = Infinity;
  for (const [column, own] of widths.entries()) {
    if (column === 0) continue;
    width += 2 + own;
    if (width > LINE_WIDTH) {
      parts.push([]);
      width = INDENT.length + widths[0]! + 2 + own;
    }
    parts.at(-1)!.push(column);
  }
  return parts.map((columns) => rows.map((row) => [row[0]!, ...columns.map((i) => row[i]!)]));
}
