import type { Syntax } from "../../language/index.js";
import { formatLength } from "../../measure/index.js";
import { leastMovement } from "../../rules/index.js";
import { softJoints, type SoftRun, type SolvedWall } from "../../solver/index.js";
import type { DocumentState } from "../document-state.js";
import { statementsOf } from "../walk-tree.js";
import type { Fixer } from "./fix.js";
import { jointEdit } from "./joint-edit.js";
import { isAtHead, statementAtHead } from "./statement-at-head.js";

/** A soft joint in a lay is as wide as the lay's joints: all of them are widened, where none of its courses is set. */
export const widenSoftJoint: Fixer = (state, diagnostic) => {
  if (diagnostic.code !== "movement/narrow") return [];
  const { plan, solved } = state.outcome;
  const statement = statementAtHead(state, diagnostic.range);
  const wall = solved.walls.find((each) => each.wall.name === diagnostic.wall);
  if (statement?.kind !== "soft-joint" || !wall) return [];
  const least = leastMovement(plan.limits);
  const runs = softJoints(wall).runs.filter(({ origin }) => isAtHead(origin, diagnostic.range));
  const joint = layJoint(state, statement);
  const [first] = runs;
  if (!first || !joint || !runs.every((run) => isWidenedWithLay(wall, run))) return [];
  const title = `Widen all joints of ${first.lay.name} to ${formatLength(least, plan.units)}`;
  const edits = [jointEdit(state, joint, first.lay.joint, least)];
  return [{ title, mends: diagnostic, preferred: false, edits }];
};

/** The joint of the lay in whose block a soft joint is stated. */
function layJoint(
  { tree }: DocumentState,
  soft: Syntax.SoftJointStatement,
): Syntax.JointStatement | null {
  for (const { statement, blocks } of statementsOf(tree.statements)) {
    const block = blocks.at(-1);
    if (statement !== soft || block?.kind !== "lay") continue;
    return block.body.find((part) => part.kind === "joint") ?? null;
  }
  return null;
}

/** Whether a soft joint is wider where its lay's joints are: not where courses are set, nor over the last course where `between` says how wide. */
function isWidenedWithLay({ lays, wall }: SolvedWall, { lay, name }: SoftRun): boolean {
  if (lays.some((each) => each.lay.origin === lay.origin && each.lay.set)) return false;
  const isLast = name.kind === "bed" && name.course === name.lay.courses.length;
  return !isLast || wall.lays.every(({ area }) => !area?.joint);
}
