import type { Diagnostic } from "../../model/index.js";
import type { SolvedLay } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import { isAtHead } from "./statement-at-head.js";

/**
 * The lays that come of the statement which a diagnostic underlines: of a list of courses one for each run, of a lining one
 * for each surface. None where courses of them are set, since no edit of the statement may move what is on the wall.
 */
export function laysAtHead({ outcome }: DocumentState, { file, range }: Diagnostic): SolvedLay[] {
  const lays = outcome.solved.walls
    .flatMap((wall) => [wall, ...wall.insides])
    .flatMap((surface) => surface.lays)
    .filter(({ lay: { origin } }) => origin.file === file && isAtHead(origin, range));
  return lays.some(({ lay }) => lay.set) ? [] : lays;
}
