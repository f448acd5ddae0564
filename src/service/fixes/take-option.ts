import { formatLength, type Unit } from "../../measure/index.js";
import type { SourceRange } from "../../model/index.js";
import { layReading } from "../../sheets/index.js";
import { type LaidOption, type SolvedLay, startedLays } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import { startWords } from "../hints.js";
import { wallOptions } from "../wall-options.js";
import { writeOption } from "../write-option.js";
import type { Fix } from "./fix.js";

/** No more ways to start are offered than this, the best first. */
const MOST_OFFERED = 3;

/** Of a lay of more pieces none are offered: an editor doesn't wait until all are laid. */
const MOST_PIECES = 20_000;

/** Other ways to start a lay, for a stretch within its lines. */
export function takeOption(state: DocumentState, range: SourceRange): Fix[] {
  const { solved } = state.outcome;
  const isAt = ({ lay: { origin } }: SolvedLay) =>
    origin.file === state.document.file &&
    origin.range.start.line <= range.start.line &&
    range.end.line <= origin.range.end.line;
  const wall = solved.walls.find((each) => startedLays(each).some(isAt));
  const laid = wall && startedLays(wall).find(isAt);
  if (!laid || laid.pieces.count > MOST_PIECES) return [];
  const others = wallOptions(solved, wall, laid)?.options.filter(({ had }) => !had) ?? [];
  return others.slice(0, MOST_OFFERED).flatMap((option) => {
    const edits = writeOption(state, laid, option);
    const title = titleOf(option, solved.plan.units);
    return edits ? [{ title, mends: null, preferred: false, edits }] : [];
  });
}

/** `Start as tile centred on wall, full course from bottom: smallest cut 2 5/8 in x 2 7/8 in`. */
function titleOf(option: LaidOption, units: Unit): string {
  const parts = ["across", "up"] as const;
  const isRange = option.lay.lay.joint.min < option.lay.lay.joint.max;
  const start = startWords(option, isRange ? [...parts, "joint"] : parts, units);
  const { smallest } = layReading(option.wall.wall, option.lay);
  if (!smallest) return `Start as ${start}: no cut`;
  const size = [smallest.width, smallest.height].map((nm) => formatLength(nm, units));
  return `Start as ${start}: smallest cut ${size.join(" x ")}`;
}
