import { formatLength, type Unit } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import {
  optionsOf,
  type SolvedPlan,
  type SolvedWall,
  startedLays,
  type WallOptions,
} from "../../solver/index.js";
import { folded } from "../folded.js";
import { setText } from "../reading-text.js";
import { LINE_WIDTH } from "./line-width.js";
import { optionLetter } from "./option-letter.js";
import { leftWords, optionStart, standingWords } from "./option-words.js";
import { optionTables } from "./option-table.js";
import { roomText } from "./room-text.js";
import { wholeTilesText } from "./whole-tiles-text.js";

const CAUTION = `
Framing, plumbing and waterproofing move before they are built, never after: follow local code, the
maker's instructions and a licensed trade.
`;

/** The best few starts of each wall side by side, and what stands where for tiles to stay whole. */
export function* optionsText(solved: SolvedPlan): Generator<string> {
  const { plan, walls } = solved;
  if (plan.title) yield `${plan.title}\n`;
  if (walls.length === 0) yield "no walls: a stock list for other plans\n";
  yield* roomText(solved);
  for (const wall of walls) yield* wallText(solved, wall);
  if (walls.some(({ lays }) => lays.length > 0)) yield CAUTION;
}

function* wallText({ plan }: SolvedPlan, solved: SolvedWall): Generator<string> {
  const { name, title, size } = solved.wall;
  const length = (nm: number): string => formatLength(nm, plan.units);
  yield `\nwall ${name}${title ? ` (${title})` : ""}: ${length(size.across)} x ${length(size.up)}\n`;
  const started = startedLays(solved);
  if (started.length === 0) {
    yield* lines(`  ${unlaidWords(solved, plan.units)}`, "    ");
    return;
  }
  for (const laid of started) {
    if (solved.lays.length > 1) yield `\n  the lay of ${laid.lay.name}:\n`;
    yield* layText(plan, optionsOf(plan, solved, laid)!);
  }
  yield* wholeTilesText(solved, plan.units);
}

function* layText(plan: Plan, found: WallOptions): Generator<string> {
  yield* lines(`  ${leftWords(found)}`, "    ");
  for (const [i, option] of found.options.entries()) {
    yield* lines(`  ${optionLetter(i)}  ${optionStart(option, plan.units)}`, "     ");
    yield* lines(`     ${standingWords(found, i, plan.units)}`, "     ");
  }
  yield* optionTables(plan, found.options);
}

function unlaidWords({ lays: [laid], refused }: SolvedWall, units: Unit): string {
  if (refused)
    return `not laid: it asks for ${refused.pieces} pieces, and the most is ${refused.most}`;
  return laid ? `${setText(laid, units)}; their start stays` : "no tile is laid on it";
}

function* lines(line: string, indent: string): Generator<string> {
  for (const part of folded(line, LINE_WIDTH, indent)) yield `${part}\n`;
}
