import { exactLength, type Unit } from "../measure/index.js";
import { type Choice, MEASURES, type Option } from "../solver/index.js";
import { aligned } from "./aligned.js";
import { MEASURE_NAMES, measureFigure } from "./measure-words.js";
import { acrossWords, upWords } from "./start-words.js";

/** What was chosen and the next best, with their numbers, as a table; and what decided. */
export function* choiceText(choice: Choice, units: Unit): Generator<string> {
  const { weighed, capped, decidedBy, chosen, others } = choice;
  const best = others.length > 0 ? "; the chosen one and the next best" : "";
  yield `  chosen out of ${weighed}${best}:\n`;
  const rows = [chosen, ...others].map((option) => [
    optionWords(option, choice.left, units),
    ...MEASURES.map((measure) => measureFigure(measure, option.score, units)),
  ]);
  for (const line of aligned([["", ...MEASURES.map((m) => MEASURE_NAMES[m])], ...rows])) {
    yield `    ${line}\n`;
  }
  const [next] = others;
  if (decidedBy && next) {
    const [mine, its] = [chosen, next].map(({ score }) => measureFigure(decidedBy, score, units));
    yield `  decided by ${MEASURE_NAMES[decidedBy].replace("*", "")}: ${mine} against ${its}\n`;
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
