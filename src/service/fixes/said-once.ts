import { softJoints } from "../../solver/index.js";
import { dropStatement } from "./drop-statement.js";
import type { Fixer } from "./fix.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** Takes a soft joint away that is stated once more. */
export const saidOnce: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "movement/no-joint") return [];
  const wall = state.outcome.solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const statement = statementAtHead(state, diagnostic.range);
  if (!wall || statement?.kind !== "soft-joint") return [];
  const isTwice = softJoints(wall).missed.some(
    ({ joint, why }) => why === "twice" && isAtHead(joint.origin, diagnostic.range),
  );
  if (!isTwice) return [];
  const edits = [dropStatement(state, statement)];
  return [{ title: "Take this line away", mends: diagnostic, preferred: true, edits }];
};
