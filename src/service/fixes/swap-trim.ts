import type { Syntax } from "../../language/index.js";
import { formatLength } from "../../measure/index.js";
import { mostProud } from "../../rules/index.js";
import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

/** So many trims are offered, the ones nearest to flush. */
const MOST_OFFERED = 3;

/** Takes a trim of the plan, or of a list that it uses, that the tile doesn't stand proud of. */
export const swapTrim: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "trim/too-thin") return [];
  const { plan, solved } = state.outcome;
  const wall = solved.walls.find(({ wall: { name } }) => name === diagnostic.wall);
  const statement = statementAtHead(state, diagnostic.range);
  const word = statement && trimWord(statement);
  if (!wall || !word) return [];
  const least = Math.max(
    ...wall.lays.map(({ lay, joint }) => lay.tile.thickness - mostProud(plan.limits, joint)),
  );
  return plan.trims
    .filter(({ thickness }) => thickness >= least)
    .sort((a, b) => a.thickness - b.thickness)
    .slice(0, MOST_OFFERED)
    .map(({ name, thickness }) => ({
      title: `Take trim ${name}, ${formatLength(thickness, plan.units)} thick`,
      mends: diagnostic,
      preferred: false,
      edits: [{ range: state.tree.lines.range(word), text: name }],
    }));
};

function trimWord(statement: Syntax.Statement): Syntax.Word | null {
  if (statement.kind === "frame") return statement.trim;
  if (statement.kind !== "edge") return null;
  const { meets } = statement;
  return "trim" in meets ? meets.trim : null;
}
