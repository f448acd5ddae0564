import { exactLength, formatLength, type Unit } from "../measure/index.js";
import { type Choice, MEASURES, type Option, type Score } from "../solver/index.js";
import { acrossWords, upWords } from "./start-words.js";

/** What the measures of a layout are called, in the order in which they decide. */
const HEADINGS: Readonly<Record<keyof Score, string>> = {
  slivers: "slivers",
  underHalf: "under half",
  imbalance: "out of balance",
  cuts: "cuts*",
  tiles: "tiles",
  jointOver: "joint over",
};

const LENGTHS: readonly (keyof Score)[] = ["imbalance", "jointOver"];

/** What was chosen and the next best, with their numbers, as a table; and what decided. */
export function* choiceText(choice: Choice, units: Unit): Generator<string> {
  const { weighed, capped, decidedBy, chosen, others } = choice;
  const best = others.length > 0 ? "; the chosen one and the next best" : "";
  yield `  chosen out of ${weighed}${best}:\n`;
  const rows = [chosen, ...others].map((option) => [
    optionWords(option, choice.left, units),
    ...MEASURES.map((measure) => figure(measure, option.score, units)),
  ]);
  for (const line of aligned([["", ...MEASURES.map((m) => HEADINGS[m])], ...rows])) {
    yield `    ${line}\n`;
  }
  const [next] = others;
  if (decidedBy && next) {
    const [mine, its] = [chosen, next].map(({ score }) => figure(decidedBy, score, units));
    yield `  decided by ${HEADINGS[decidedBy].replace("*", "")}: ${mine} against ${its}\n`;
  }
  if (capped) yield `  there are too many starts to weigh them all: a better one may be left\n`;
  yield `  * a notched piece counts twice\n`;
}

/** What an option says of that which was left to the solver. */
function optionWords(option: Option, left: Choice["left"], units: Unit): string {
  const words = {
    across: acrossWords(option.across, units),
    up: upWords(option.up, units),
    joint: `joint ${exactLength(option.joint, units)}`,
  };
  return left.map((part) => words[part]).join(", ");
}

function figure(measure: keyof Score, score: Score, units: Unit): string {
  return LENGTHS.includes(measure) ? formatLength(score[measure], units) : `${score[measure]}`;
}

/** Rows with their first column to the left and the others to the right. */
function aligned(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows.map((row) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[i]!)))
      .join("  "),
  );
}
