import type { Syntax } from "../../language/index.js";
import { exactLength, formatLength, type Nm } from "../../measure/index.js";
import type { Diagnostic, Lay } from "../../model/index.js";
import { leastJoint, leastLongJoint } from "../../rules/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import type { Fixer } from "./fix.js";
import { jointEdit } from "./joint-edit.js";
import { laysAtHead } from "./lays-at-head.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** Widens a joint to the least that the tiles which are laid with it may have; what is set stays as it is. */
export const widenJoint: Fixer = (state, diagnostic) => {
  const { code, range } = diagnostic;
  if (code !== "joint/too-narrow" && code !== "joint/long-tile") return [];
  const { limits, units } = state.outcome.plan;
  const lays = laysWith(state, diagnostic);
  const [first] = lays;
  if (!first || lays.some(({ set }) => set)) return [];
  const least = Math.max(
    ...lays.map((lay) => leastJoint(limits, lay.tile.variation)),
    ...lays.map((lay) => leastLongJoint(limits, lay) ?? 0),
  );
  const edit = editOf(state, statementAtHead(state, range), first.joint, least);
  if (!edit) return [];
  const title = `Widen the joint to ${formatLength(least, units)}`;
  return [{ title, mends: diagnostic, preferred: true, edits: [edit] }];
};

/** The lays of a wall whose joint a diagnostic underlines, or those inside an opening of which it underlines the lining. */
function laysWith(state: DocumentState, diagnostic: Diagnostic): readonly Lay[] {
  const wall = state.outcome.plan.walls.find(({ name }) => name === diagnostic.wall);
  const lays = wall?.lays.filter(({ joint }) => isAtHead(joint.origin, diagnostic.range)) ?? [];
  return lays.length > 0 ? lays : laysAtHead(state, diagnostic).map(({ lay }) => lay);
}

/** A lining that states no joint has the wall's, and states its own from then on. */
function editOf(
  state: DocumentState,
  statement: Syntax.Statement | null,
  had: Lay["joint"],
  least: Nm,
): TextEdit | null {
  if (statement?.kind === "joint") return jointEdit(state, statement, had, least);
  if (statement?.kind !== "lining") return null;
  const { lines } = state.tree;
  const text = exactLength(least, state.outcome.plan.units);
  const { joint, across, up } = statement;
  if (joint) return { range: lines.range(joint), text };
  // A joint stands behind the bond and before the starts.
  const start = across ?? up;
  const at = lines.position(start ? start.start : statement.end);
  return { range: { start: at, end: at }, text: start ? `joint ${text} ` : ` joint ${text}` };
}
