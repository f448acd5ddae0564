import { exactLength } from "../../measure/index.js";
import type { Hole } from "../../model/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { statementFrom } from "../statement-from.js";

/** A hole's middle at another place: only what changes is written anew, so that a named length stays one. */
export function holePlaceEdits(
  state: DocumentState,
  hole: Hole,
  at: Hole["at"],
): TextEdit[] | null {
  const statement = statementFrom(state, hole.origin);
  if (statement?.kind !== "hole") return null;
  const { units } = state.outcome.plan;
  const wanted = [
    [statement.x, hole.at.x, at.x],
    [statement.y, hole.at.y, at.y],
  ] as const;
  return wanted
    .filter(([, before, after]) => before !== after)
    .map(([written, , after]) => ({
      range: state.tree.lines.range(written),
      text: exactLength(after, units),
    }));
}
