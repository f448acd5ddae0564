import type { MeasuredTop } from "../model/index.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { courseName } from "./set-words.js";
import { COURSE_LEVEL, lengthLimit } from "./trade.js";
import { length, lengthOff } from "./words.js";

/** Courses that are set and whose top was measured at several heights: the bed joint over it has to take that up. */
export const setOutOfLevel: Rule = {
  code: "set/out-of-level",
  severity: "warning",
  title: "the top of set courses is more than 1/8 in out of level",
  source: COURSE_LEVEL.source,
  limit: "level",
  ofSet: true,
  check: (wall, plan) => wall.lays.flatMap((lay) => findSlope(wall, plan, lay)),
};

function findSlope(wall: SolvedWall, plan: SolvedPlan, laid: SolvedLay): Finding[] {
  const { lay } = laid;
  const { set } = lay;
  if (!set || set.tops.length < 2) return [];
  const [lowest, highest] = [least(set.tops), least(set.tops, -1)];
  const slope = highest.y - lowest.y;
  const most = lengthLimit(plan.plan.limits, "level", COURSE_LEVEL.most);
  if (slope <= most) return [];
  const place = ({ at, y }: MeasuredTop): string =>
    `${length(plan, y)} at ${length(plan, at ?? 0)} from the left`;
  const message =
    `the top of ${courseName(laid, set.to)} is ${lengthOff(plan, slope, most)} out of level: ` +
    `${place(lowest)}, ${place(highest)}; at most ${length(plan, most)} is wanted, ` +
    "which the bed joint over it takes up";
  return [{ origin: set.origin, blocks: [lay, lay.tile, wall.wall], message }];
}

function least(tops: readonly MeasuredTop[], sign: 1 | -1 = 1): MeasuredTop {
  return tops.reduce((found, top) => (sign * top.y < sign * found.y ? top : found));
}
