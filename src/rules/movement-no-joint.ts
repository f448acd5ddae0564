import { type MissedJoint, softJoints, type SolvedPlan } from "../solver/index.js";
import type { Rule } from "./rule.js";
import { length } from "./words.js";

/** Soft joints that a plan states where its tile has no joint to fill. */
export const movementNoJoint: Rule = {
  code: "movement/no-joint",
  severity: "error",
  title: "a soft joint is stated where the tile has no joint that goes through",
  source: "the plan language",
  limit: null,
  ofSet: true,
  check: (wall, plan) =>
    softJoints(wall).missed.map((missed) => ({
      origin: missed.joint.origin,
      blocks: [missed.lay, missed.lay.tile, wall.wall],
      message: messageOf(missed, plan),
      ...(missed.why === "twice" ? { severity: "warning" } : {}),
    })),
};

function messageOf({ lay, joint, why, courses }: MissedJoint, plan: SolvedPlan): string {
  const place = joint.kind === "head" ? `at ${length(plan, joint.x)}` : `over course ${joint.over}`;
  switch (why) {
    case "shifted":
      return (
        `the bond has no head joint that goes through ${place}; ` +
        "a joint over a course, or the wall parted in two lays there, is wanted"
      );
    case "out-of-line":
      return (
        `the head joints of the lay's tiles are not in line ${place}; ` +
        "a joint over a course, or the wall parted in two lays there, is wanted"
      );
    case "no-head-joint":
      return `lay ${lay.name} has no head joint ${place}; a place between its first and its last tile is wanted`;
    case "no-course":
      return `lay ${lay.name} has ${courses} courses, and none ${joint.kind === "bed" ? joint.over : ""}; a course that is there is wanted`;
    case "nothing-over":
      return `no tile stands ${place}; a course with tile over it is wanted`;
    case "twice":
      return `the joint ${place} is soft already; it is wanted once`;
  }
}
