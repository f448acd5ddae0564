import { buildLiteral } from "./build-expression.js";
import type { Builds } from "./build-statement.js";
import { nodeAt, tokenAt } from "./cst.js";

/** `movement joint at 120`, and the joint between lays. */
export const SOFT_JOINT_BUILDS: Builds = {
  softJoint: (node, tree, stated) => {
    const over = nodeAt(node, "overCourse");
    return {
      kind: "soft-joint",
      ...stated,
      joint: over
        ? { kind: "bed", over: buildLiteral(tokenAt(over, "over")!, tree.problems) }
        : { kind: "head", at: tree.length(node) },
    };
  },
  between: (node, tree, stated) => ({
    kind: "between",
    ...stated,
    soft: tokenAt(node, "soft") !== undefined,
    length: tree.length(node),
  }),
};
