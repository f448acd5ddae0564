import type { Nm } from "../../measure/index.js";
import { type CornerWall, twiceMiss } from "../../rules/index.js";
import { upWords } from "../../sheets/index.js";
import { moduleUp } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import { statementFrom } from "../statement-from.js";
import { cornerOf } from "./corner-of.js";
import type { Fixer } from "./fix.js";
import { stateStart } from "./state-start.js";

/** Moves the courses of the wall that is set last to those of the other, the shorter way. */
export const meetCourses: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "corner/courses-miss") return [];
  const corner = cornerOf(state, diagnostic);
  const twice = corner && twiceMiss(corner.over.lay, corner.under.lay);
  if (!corner || twice === null) return [];
  const { over, under } = corner;
  const text = meetingStart(state, over, under, twice);
  const edit = stateStart(state, over.lay, "up", text);
  if (!edit) return [];
  const title = `Let the courses meet those of ${under.wall.wall.name}: ${text}`;
  return [{ title, mends: diagnostic, preferred: true, edits: [edit] }];
};

/** The other wall's own words where they do, so that a named line stays one; else the joint over course 1. */
function meetingStart(
  state: DocumentState,
  over: CornerWall,
  under: CornerWall,
  twice: number,
): string {
  const { lattice, joint } = over.lay;
  const module = moduleUp(lattice);
  const y = lattice.y - Math.trunc(twice / 2);
  const bed: Nm = y + Math.floor(joint / 2) - joint;
  const { up } = under.lay;
  const shared = up.kind === "joint" && (up.y - bed) % module === 0;
  const words = shared ? writtenStart(state, under) : null;
  const { units } = state.outcome.plan;
  return words ?? upWords({ kind: "joint", y: shared ? up.y : bed + module }, units);
}

/** A wall's `up` statement as it stands in the text. */
function writtenStart(state: DocumentState, { lay }: CornerWall): string | null {
  const block = statementFrom(state, lay.lay.origin);
  const statement = block?.kind === "lay" && block.body.find(({ kind }) => kind === "up");
  return statement ? state.document.text.slice(statement.start, statement.end) : null;
}
