import type { Syntax } from "../../language/index.js";
import { exactLength, formatLength } from "../../measure/index.js";
import { leastMovement } from "../../rules/index.js";
import type { DocumentState } from "../document-state.js";
import type { TextEdit } from "../edits.js";
import { insertInBlock } from "../insert-in-block.js";
import type { Fixer } from "./fix.js";
import { statementAtHead } from "./statement-at-head.js";

/** Adds a soft joint that is missing, or widens one to the least. */
export const softJoint: Fixer = (state, diagnostic) => {
  const { code, range } = diagnostic;
  if (code !== "movement/missing" && code !== "movement/narrow") return [];
  const { plan } = state.outcome;
  const least = leastMovement(plan.limits);
  const statement = statementAtHead(state, range);
  const edit = statement && editOf(state, statement, exactLength(least, plan.units));
  if (!edit) return [];
  const shown = formatLength(least, plan.units);
  const title =
    code === "movement/missing"
      ? `Add a movement joint of ${shown}`
      : `Widen the movement joint to ${shown}`;
  return [{ title, mends: diagnostic, preferred: true, edits: [edit] }];
};

function editOf(state: DocumentState, statement: Syntax.Statement, width: string): TextEdit | null {
  const { lines } = state.tree;
  if (statement.kind === "edge") {
    const clause = statement.clauses.find((each) => each.kind === "joint-clause");
    if (!clause) {
      const end = lines.position(statement.end);
      return { range: { start: end, end }, text: ` movement ${width}` };
    }
    return { range: lines.range(clause), text: `movement ${width}` };
  }
  if (statement.kind === "between") {
    return { range: lines.range(statement.length), text: width };
  }
  if (statement.kind !== "opening") return null;
  const movement = statement.body.find((part) => part.kind === "movement");
  if (movement) return { range: lines.range(movement.length), text: width };
  return insertInBlock(state, statement, [`movement ${width}`]);
}
