import type { Unit } from "../measure/index.js";
import type { Position, SourceRange } from "../model/index.js";
import { acrossWords, toldLength, upWords } from "../sheets/index.js";
import type { Choice, Option, SolvedLay } from "../solver/index.js";
import type { DocumentState } from "./document-state.js";
import type { TextEdit } from "./edits.js";
import { writeChoice } from "./write-choice.js";

/** What was left to the solver, shown at the end of a lay's heading. */
export interface Hint {
  readonly at: Position;
  /** `# chosen: joint centred on wall, joint 5/64`. */
  readonly text: string;
  readonly help: string;
  /** Writes it down. */
  readonly edits: readonly TextEdit[];
}

/** The hints of a text, or of a stretch of it. */
export function hintsOf(state: DocumentState, within?: SourceRange): Hint[] {
  const { plan, solved } = state.outcome;
  return solved.walls
    .flatMap(({ lays }) => lays)
    .flatMap((lay) => {
      const { origin } = lay.lay;
      const { choice } = lay;
      if (!choice || origin.file !== state.document.file) return [];
      const { line } = origin.range.start;
      if (within && (line < within.start.line || line > within.end.line)) return [];
      const edits = writeChoice(state, lay);
      if (!edits) return [];
      const at = headingEnd(state, line);
      const text = `# chosen: ${chosenWords(lay, plan.units)}`;
      return [{ at, text, help: `Chosen out of ${choice.weighed} starts.`, edits }];
    });
}

/** `tile centred on wall, full course from bottom, joint 5/64`, as far as it was chosen. */
export function chosenWords(solved: SolvedLay, unit: Unit): string {
  return startWords(solved, solved.choice?.left ?? [], unit);
}

/** These parts of a start, as people are told them. */
export function startWords(
  { across, up, joint }: Pick<Option, "across" | "up" | "joint">,
  parts: Choice["left"],
  unit: Unit,
): string {
  const words = {
    across: acrossWords(across, unit, toldLength).replace(/^across /, ""),
    up: upWords(up, unit, toldLength).replace(/^up /, ""),
    joint: `joint ${toldLength(joint, unit)}`,
  };
  return parts.map((part) => words[part]).join(", ");
}

/** Behind the heading's last character, a comment included. */
export function headingEnd({ tree }: DocumentState, line: number): Position {
  const end = tree.lines.position(tree.lines.offset({ line, character: Infinity }));
  return end;
}
