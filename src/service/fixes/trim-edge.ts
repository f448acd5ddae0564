import type { Syntax } from "../../language/index.js";
import { formatLength } from "../../measure/index.js";
import { mostProud } from "../../rules/index.js";
import type { DocumentState } from "../document-state.js";
import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

/** So many trims are offered, the ones nearest to flush. */
const MOST_OFFERED = 3;

/** Ends a side at which cut tile shows with a trim that the tile doesn't stand proud of. */
export const trimEdge: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "edge/bare") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find(({ wall: { name } }) => name === diagnostic.wall);
  const statement = statementAtHead(state, diagnostic.range);
  const end = statement?.kind === "edge" ? meetingEnd(state, statement) : null;
  if (!wall || statement?.kind !== "edge" || end === null) return [];
  const least = Math.max(
    ...wall.lays.map(({ lay, joint }) => lay.tile.thickness - mostProud(plan.limits, joint)),
  );
  const at = state.tree.lines.position(end);
  return plan.trims
    .filter(({ thickness }) => thickness >= least)
    .sort((a, b) => a.thickness - b.thickness)
    .slice(0, MOST_OFFERED)
    .map(({ name, face }) => ({
      title: `End the ${statement.side} with trim ${name}, ${formatLength(face.across, plan.units)} wide`,
      mends: diagnostic,
      preferred: false,
      edits: [{ range: { start: at, end: at }, text: ` trim ${name}` }],
    }));
};

/** Where the words end that say what a side without trim meets; null where it has none to be ended with. */
function meetingEnd({ tree }: DocumentState, statement: Syntax.EdgeStatement): number | null {
  const { meets, head } = statement;
  if (meets.kind === "outside") return "trim" in meets && !meets.trim ? meets.lap.end : null;
  if (meets.kind !== "free" || meets.trim) return null;
  const free = /^\s+free/.exec(tree.text.slice(head.end, statement.end));
  return free && head.end + free[0].length;
}
