import type { Nm } from "../measure/index.js";
import type { Opening } from "../model/index.js";
import {
  type Box,
  boundsOf,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  type TrimRun,
} from "../solver/index.js";
import { headJointsOf } from "./head-joints.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, lengthLimit, TRIM_CLEAR } from "./trade.js";
import { length, lengthOff, openingName } from "./words.js";

/** A joint of a frame that is neither in line with a joint of the field beside it nor well clear of it. */
export const jointTrimClash: Rule = {
  code: "joint/trim-clash",
  severity: "warning",
  title: "a frame's joint is neither in line with a field joint nor 1/2 in clear of it",
  source: COMMON_PRACTICE,
  limit: "clear",
  check: (wall, plan) =>
    wall.lays.flatMap((lay) =>
      wall.trims.flatMap((run) =>
        "opening" in run.along ? findClash(wall, plan, lay, run, run.along.opening) : [],
      ),
    ),
};

/** A joint's stretch along the side of the frame. */
interface Stretch {
  readonly from: Nm;
  readonly to: Nm;
}

function findClash(
  wall: SolvedWall,
  plan: SolvedPlan,
  lay: SolvedLay,
  run: TrimRun,
  opening: Opening,
): Finding[] {
  if (run.joints.length === 0 || !opening.frame) return [];
  const clear = lengthLimit(plan.plan.limits, "clear", TRIM_CLEAR);
  const field = fieldJoints(lay, run, opening);
  const gaps = run.joints
    .map((joint) => clashOf(stretchAlong(run, boundsOf(joint)), field))
    .filter((gap) => gap !== null && gap < clear);
  if (gaps.length === 0) return [];
  const n = gaps.length;
  const nearest = Math.max(0, Math.min(...gaps.map((gap) => gap ?? clear)));
  return [
    {
      origin: opening.frame.origin,
      blocks: [opening, opening.frame.trim, lay.lay, lay.lay.tile, wall.wall],
      message:
        `${n === 1 ? "1 joint" : `${n} joints`} at the ${run.side} of the frame of ` +
        `${openingName(opening)} ${n === 1 ? "stands" : "stand"} ${lengthOff(plan, nearest, clear)} off a ` +
        `field joint; in line with it, or at least ${length(plan, clear)} clear of it, is wanted`,
    },
  ];
}

/**
 * How clear a joint stays of the nearest field joint; null when it is in line with one. Both middles
 * may be half a nanometre off their true place, since each was rounded once.
 */
function clashOf(joint: Stretch, field: readonly Stretch[]): Nm | null {
  const inLine = field.some(({ from, to }) => Math.abs(from + to - joint.from - joint.to) <= 2);
  if (inLine || field.length === 0) return null;
  return Math.min(...field.map(({ from, to }) => Math.max(from - joint.to, joint.from - to)));
}

function stretchAlong({ side }: TrimRun, box: Box): Stretch {
  return side === "top" || side === "bottom"
    ? { from: box.left, to: box.right }
    : { from: box.bottom, to: box.top };
}

/** The field's joints that meet the frame at one side: head joints under and over it, bed joints beside. */
function fieldJoints(lay: SolvedLay, run: TrimRun, opening: Opening): readonly Stretch[] {
  const box = lay.region.takeaways.find((takeaway) => takeaway.opening === opening)?.box;
  if (!box) return [];
  const { courses } = lay;
  if (run.side === "left" || run.side === "right") {
    return courses
      .slice(1)
      .map((course, i) => ({ from: courses[i]!.top, to: course.bottom }))
      .filter(({ from, to }) => to > box.bottom && from < box.top);
  }
  const abutting =
    run.side === "bottom"
      ? courses.filter((course) => course.bottom < box.bottom).length - 1
      : courses.findIndex((course) => course.top > box.top);
  if (abutting < 0) return [];
  return headJointsOf(lay, abutting)
    .map((joint) => ({ from: joint.box.left, to: joint.box.right }))
    .filter(({ from, to }) => to > box.left && from < box.right);
}
