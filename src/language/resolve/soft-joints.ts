import type { FieldJoint, LayJoint } from "../../model/index.js";
import type { BetweenStatement, SoftJointStatement } from "../syntax.js";
import { courseCount } from "./lay-courses.js";
import { lengthOf } from "./lengths.js";
import type { WallDraft } from "./wall-draft.js";

/** The soft joints that a block states; one that can't be understood is left out. */
export function resolveSoftJoints(
  statements: readonly SoftJointStatement[],
  draft: WallDraft,
): FieldJoint[] {
  const { scope, name: wall } = draft;
  return statements.flatMap((statement): FieldJoint[] => {
    const { joint } = statement;
    const origin = scope.report.origin(statement);
    if (joint.kind === "head") {
      const x = lengthOf(joint.at, "any", scope, wall);
      return x === null ? [] : [{ kind: "head", x, origin }];
    }
    const over = courseCount(joint.over, "plan/soft-joint", draft);
    return over === null ? [] : [{ kind: "bed", over, origin }];
  });
}

/** What a lay says of the joint to those beside it; null where it says nothing. */
export function resolveBetween(
  statement: BetweenStatement | undefined,
  { scope, name: wall }: WallDraft,
): LayJoint | null {
  if (!statement) return null;
  const width = lengthOf(statement.length, "not-negative", scope, wall);
  if (width === null) return null;
  const kind = statement.soft ? "movement" : "joint";
  return { kind, width, origin: scope.report.origin(statement) };
}
