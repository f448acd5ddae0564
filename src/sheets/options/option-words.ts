import { exactLength, type Unit } from "../../measure/index.js";
import type { LaidOption, WallOptions } from "../../solver/index.js";
import { MEASURE_NAMES, measureFigure } from "../measure-words.js";
import { acrossWords, upWords } from "../start-words.js";
import { optionLetter } from "./option-letter.js";

/** How a wall's options came to be: out of how many starts, and how the plan's own stands. */
export function leftWords({ left, weighed, capped, options }: WallOptions): string {
  const more = capped ? ", which are too many to weigh them all: a better one may be left" : "";
  const starts = `${weighed} starts${more}`;
  if (left.includes("across") && left.includes("up")) return `chosen out of ${starts}`;
  const has = options.findIndex(({ had }) => had);
  const stated = `its start is ${left.length === 0 ? "" : "partly "}written down (${optionLetter(has)})`;
  if (has === 0) return `${stated}; none is better of ${starts}`;
  return `${stated}; left open, it would be A, out of ${starts}`;
}

/** An option's start as the plan would state it. */
export function optionStart({ across, up, joint }: LaidOption, units: Unit): string {
  const words = [acrossWords(across, units), upWords(up, units)];
  return [...words, `joint ${exactLength(joint, units)}`].join(", ");
}

/** Where an option stands among the others, and what decided. */
export function standingWords({ options }: WallOptions, i: number, units: Unit): string {
  const { behind, had, score } = options[i]!;
  const [best] = options;
  const own = had ? "what the plan has; " : "";
  if (i === 0) return `${own}the best`;
  if (!behind) return `${own}as good as A`;
  const [its, theirs] = [score, best!.score].map((each) => measureFigure(behind, each, units));
  const name = MEASURE_NAMES[behind].replace("*", "");
  return `${own}behind A at ${name}: ${its!} against ${theirs!}`;
}
