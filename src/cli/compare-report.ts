import {
  comparisonJson,
  comparisonMarkdown,
  comparisonText,
  headline,
  isEmpty,
  markdown,
} from "../compare/index.js";
import { paintFor } from "./colours.js";
import type { CompareAnswer } from "./job-desk.js";
import type { PlanPair } from "./plan-pairs.js";
import { harmless } from "./harmless.js";
import { counted } from "./tally.js";

/** A pair of plans and what its comparison says. */
export interface ComparedPair {
  readonly pair: PlanPair;
  readonly answer: CompareAnswer;
}

/** Where a plan's pictures are, from the report. */
export interface PicturePlaces {
  readonly overlay: string;
  /** One for each wall that changed. */
  readonly sides: readonly string[];
}

export type Status = "new" | "gone" | "changed" | "text" | "same";

export function statusOf({ pair, answer }: ComparedPair): Status {
  if (pair.before === null) return "new";
  if (pair.after === null) return "gone";
  if (!isEmpty(answer.comparison)) return "changed";
  return answer.sameText ? "same" : "text";
}

/** Plan by plan those that changed, then how many there were of each kind. */
export function* textReport(
  compared: readonly ComparedPair[],
  same: number,
  colours: boolean,
): Generator<string> {
  const paint = paintFor(colours);
  for (const each of compared) {
    const status = statusOf(each);
    if (status === "same") continue;
    yield `${paint("strong", harmless(titleOf(each)))}\n`;
    for (const part of comparisonText(each.answer.comparison)) {
      const line = harmless(part.trimEnd());
      yield line.startsWith(" ") ? `${line}\n` : `${paint("place", line)}\n`;
    }
    yield "\n";
  }
  yield `${tallyLine(compared, same)}\n`;
}

export function* jsonReport(
  compared: readonly ComparedPair[],
  shownPath: (file: string) => string,
): Generator<string> {
  yield `{"schema":1,"plans":[`;
  for (const [i, each] of compared.entries()) {
    const { pair, answer } = each;
    const names = {
      before: pair.before && shownPath(pair.before),
      after: pair.after && shownPath(pair.after),
    };
    const told = comparisonJson(answer.comparison, shownPath);
    yield `${i > 0 ? "," : ""}\n${JSON.stringify({ file: names, status: statusOf(each), ...told })}`;
  }
  yield "]}\n";
}

/** Code hosts take comments of up to 65,536 characters. */
const MOST_CHARACTERS = 60_000;
/** Lines a section of one plan, and when many plans changed. */
const MOST_LINES = 12;
const FEW_LINES = 4;
const FEW_PLANS = 8;

/** For a review comment: plans that don't fit any more are told in one line, then counted. */
export function* markdownReport(
  compared: readonly ComparedPair[],
  same: number,
  picturesOf: ((pair: ComparedPair) => PicturePlaces) | null,
): Generator<string> {
  const told = compared.filter((each) => statusOf(each) !== "same");
  const most = told.length > FEW_PLANS ? FEW_LINES : MOST_LINES;
  yield `### ${tallyLine(compared, same)}\n\n`;
  let length = 0;
  let left = 0;
  for (const each of told) {
    const { comparison } = each.answer;
    const head = `#### ${markdown(titleOf(each))}\n\n`;
    const places = isEmpty(comparison) ? null : picturesOf?.(each);
    const pictures = places
      ? [
          `![overlay of both](${places.overlay})\n\n`,
          ...places.sides.map((file) => `![before and after](${file})\n\n`),
        ].join("")
      : "";
    const whole =
      head + pictures + [...comparisonMarkdown(comparison, { most })].join("").trimEnd();
    const short = `${head}${markdown(headline(comparison))}`;
    const text = length + whole.length < MOST_CHARACTERS ? whole : short;
    length += text.length;
    if (length > MOST_CHARACTERS) left++;
    else yield `${text}\n\n`;
  }
  if (left > 0) yield `And ${counted(left, "more plan")}.\n\n`;
  yield CAUTION;
}

/** Cutting: OSHA 29 CFR 1926.1153 Table 1. */
const CAUTION =
  "Before tile that is cut already is cut again: wet or with extraction. Follow local code, the " +
  "makers' instructions and a licensed trade.\n";

function titleOf({ pair }: ComparedPair): string {
  const { name, before, after } = pair;
  if (before === null) return `${name} (new)`;
  if (after === null) return `${name} (gone)`;
  return name;
}

function tallyLine(compared: readonly ComparedPair[], same: number): string {
  const count = (status: Status) => compared.filter((each) => statusOf(each) === status).length;
  const unchanged = same + count("same");
  const all = compared.length + same;
  const parts = [
    [count("changed"), "changed"],
    [count("new"), "new"],
    [count("gone"), "gone"],
    [count("text"), "with another text and the same layout"],
    [unchanged, "unchanged"],
  ] as const;
  const told = parts.filter(([number]) => number > 0).map(([number, word]) => `${number} ${word}`);
  const summary = told.length > 0 ? `: ${told.join(", ")}` : "";
  return `${counted(all, "plan")} compared${summary}`;
}
