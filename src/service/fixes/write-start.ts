import type { SourceRange } from "../../model/index.js";
import type { DocumentState } from "../document-state.js";
import { chosenWords } from "../hints.js";
import { writeChoice } from "../write-choice.js";
import type { Fix } from "./fix.js";

/** Writes down what was left to the solver, for a lay whose lines the stretch touches. */
export function writeStart(state: DocumentState, range: SourceRange): Fix[] {
  const { plan, solved } = state.outcome;
  return solved.walls
    .flatMap(({ lays }) => lays)
    .flatMap((lay) => {
      const { origin } = lay.lay;
      const touches =
        origin.file === state.document.file &&
        origin.range.start.line <= range.end.line &&
        origin.range.end.line >= range.start.line;
      const edits = touches ? writeChoice(state, lay) : null;
      if (!edits) return [];
      const title = `Write the chosen start down: ${chosenWords(lay, plan.units)}`;
      return [{ title, mends: null, preferred: false, edits }];
    });
}
