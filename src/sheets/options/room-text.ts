import { counted, formatLength, type Nm } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import { lossWords, missWords } from "../../rules/index.js";
import {
  measureRoom,
  MEASURES,
  type RoomOption,
  roomOptions,
  type SolvedPlan,
  wishOutcomes,
} from "../../solver/index.js";
import { folded } from "../folded.js";
import { MEASURE_NAMES, measureFigure } from "../measure-words.js";
import { LINE_WIDTH } from "./line-width.js";
import { optionLetter } from "./option-letter.js";
import { columnTables, type Row } from "./option-table.js";
import { roomFigures } from "./room-figures.js";
import { layoutWords, outcomeWords, reasonWords, wishLabel } from "./room-words.js";

/** The best few layouts of the room side by side, and what becomes of each wish. Nothing for a plan without wishes or free places. */
export function* roomText(solved: SolvedPlan): Generator<string> {
  if (!solved.room) return;
  const { asked, weighed, capped } = solved.room;
  const options = roomOptions(solved);
  const laid = solved.walls.filter(({ lays }) => lays.length > 0).length;
  const more = capped ? "; not all could be weighed: a better one may be left" : "";
  yield `\nthe room: ${counted(laid, "wall")} chosen together out of ${weighed} heights and joints${more}\n`;
  for (const [i, option] of options.entries()) yield* optionText(options, option, i, asked);
  yield* columnTables(tableRows(asked, options));
  yield `    * a notched piece counts twice   ** for the room, offcuts used again\n`;
  yield* wishesText(solved, asked);
}

function* optionText(
  options: readonly RoomOption[],
  option: RoomOption,
  i: number,
  { wishes, units }: Plan,
): Generator<string> {
  const loss =
    i === 0 ? "" : `; against A it costs ${lossWords(option, options[0]!, wishes, units)}`;
  yield* lines(`  ${optionLetter(i)}  ${reasonWords(option.reason, units)}${loss}`, "     ");
  for (const { wall, lays } of option.solved.walls) {
    if (lays.length === 0) continue;
    yield* lines(`     ${wall.name}: ${layoutWords({ wall, lays }, units)}`, "       ");
  }
}

function tableRows({ wishes, units }: Plan, options: readonly RoomOption[]): Row[] {
  const figures = options.map(({ solved }) => roomFigures(solved));
  const length = (nm: Nm | null): string => (nm === null ? "-" : formatLength(nm, units));
  return [
    ["", ...options.map((_, i) => optionLetter(i))],
    ...wishes.map((wish, i) => [
      wishLabel(wish, units),
      ...options.map(({ misses }) =>
        misses[i] === 0 ? "met" : missWords(wish, misses[i]!, units),
      ),
    ]),
    ...MEASURES.filter(
      (measure) => measure !== "jointOver" || options.some(({ score }) => score.jointOver > 0),
    ).map((measure) => [
      measure === "tiles" ? "tiles begun" : MEASURE_NAMES[measure],
      ...options.map(({ score }) => measureFigure(measure, score, units)),
    ]),
    ["smallest cut: width", ...figures.map(({ width }) => length(width))],
    ["smallest cut: height", ...figures.map(({ height }) => length(height))],
    ["tiles needed**", ...figures.map(({ tilesNeeded }) => `${tilesNeeded}`)],
  ];
}

function* wishesText(solved: SolvedPlan, asked: Plan): Generator<string> {
  const { wishes, units } = asked;
  if (wishes.length === 0) return;
  yield "\n  its wishes, the most wanted first\n";
  const own = measureRoom(solved.plan, solved.walls, wishes);
  for (const outcome of wishOutcomes(solved)) {
    yield* lines(
      `    ${wishLabel(outcome.wish, units)}: ${outcomeWords(outcome, own, asked)}`,
      "      ",
    );
  }
}

function* lines(line: string, indent: string): Generator<string> {
  for (const part of folded(line, LINE_WIDTH, indent)) yield `${part}\n`;
}
