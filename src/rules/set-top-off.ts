import type { SolvedLay, SolvedPlan, SolvedWall } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { courseName } from "./set-words.js";
import { COMMON_PRACTICE, lengthLimit } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * Courses that are set and whose top was measured elsewhere than the plan has it. Off by no more than one
 * joint, the next bed joints hide it; off by more, courses on the walls beside no longer meet these, and what
 * the layout was planned for (a sill, the top course) is off as much.
 */
export const setTopOff: Rule = {
  code: "set/top-off",
  severity: "warning",
  title: "the top of set courses is measured more than a joint off where the plan has it",
  source: COMMON_PRACTICE,
  limit: "set",
  ofSet: true,
  check: (wall, plan) => wall.lays.flatMap((lay) => findOff(wall, plan, lay)),
};

function findOff(wall: SolvedWall, plan: SolvedPlan, laid: SolvedLay): Finding[] {
  const { lay, stand, joint } = laid;
  const { set } = lay;
  if (!set || !stand || set.tops.length === 0) return [];
  const measured = Math.max(...set.tops.map(({ y }) => y));
  const off = measured - stand.planned;
  const most = lengthLimit(plan.plan.limits, "set", joint);
  if (stand.reached && Math.abs(off) <= most) return [];
  const course = courseName(laid, set.to);
  const place =
    `the top of ${course} is measured at ${length(plan, measured)}, ` +
    `${lengthOff(plan, Math.abs(off), most)} ${off < 0 ? "under" : "over"} where the plan has it, ` +
    `at ${length(plan, stand.planned)}`;
  const told = { origin: set.origin, blocks: [lay, lay.tile, wall.wall] };
  if (!stand.reached) {
    const message =
      `${place}: the bed joints under it can't come to that, and it is left out; ` +
      "wanted the top of that course, or the joint or tile that it was set with";
    return [{ ...told, severity: "error", message }];
  }
  const joints = set.to > set.from ? `, its bed joints ${length(plan, stand.bed)} wide` : "";
  return [{ ...told, message: `${place}${joints}; at most ${length(plan, most)} off is wanted` }];
}
