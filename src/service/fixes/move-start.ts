import type { Syntax } from "../../language/index.js";
import { acrossWords, upWords } from "../../sheets/index.js";
import { type CleanStart, nearestClean } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import { statementFrom } from "../statement-from.js";
import type { Fix, Fixer } from "./fix.js";

/** Moves a stated start to the nearest one that leaves no sliver, where there is one. */
export const moveStart: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "cut/sliver") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const [lay] = wall?.lays ?? [];
  const block = lay && statementFrom(state, lay.lay.origin);
  if (!wall || !lay || block?.kind !== "lay") return [];
  // A start that was left to the solver has the fewest slivers as it is.
  const stated = lay.lay[directionOf(diagnostic.message)];
  if (!stated) return [];
  const clean = nearestClean(plan, wall, lay, directionOf(diagnostic.message));
  const fix = clean && fixOf(state, block, clean);
  return fix ? [{ ...fix, mends: diagnostic }] : [];
};

/** Pieces are too narrow across, or too low up. */
function directionOf(message: string): "across" | "up" {
  return message.includes(" high; ") ? "up" : "across";
}

function fixOf(
  state: DocumentState,
  block: Syntax.LayStatement,
  clean: CleanStart,
): Omit<Fix, "mends"> | null {
  const { units } = state.outcome.plan;
  const statement = block.body.find(({ kind }) => kind === clean.direction);
  if (!statement) return null;
  const text =
    clean.direction === "across" ? acrossWords(clean.start, units) : upWords(clean.start, units);
  return {
    title: `Move to the nearest start without such a sliver: ${text}`,
    preferred: false,
    edits: [{ range: state.tree.lines.range(statement), text }],
  };
}
