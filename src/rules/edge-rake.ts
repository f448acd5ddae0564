import type { Nm } from "../measure/index.js";
import {
  clearRuns,
  courseBottom,
  firstPast,
  isStraight,
  lastBefore,
  moduleUp,
  rangeBetween,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { CUT_COURSE_SOURCE } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * A bottom or top so far out of level, or courses so placed, that it passes out of one course into
 * the next: more than one course is then scribed, and the rake shows as a stair of cuts.
 */
export const edgeRake: Rule = {
  code: "edge/rake",
  severity: "warning",
  title: "a bottom or top out of level passes out of one course",
  source: CUT_COURSE_SOURCE,
  limit: "rake",
  check: (wall, plan) =>
    wall.lays.flatMap((lay) => [
      ...findRake(wall, plan, lay, "bottom"),
      ...findRake(wall, plan, lay, "top"),
    ]),
};

function findRake(
  wall: SolvedWall,
  plan: SolvedPlan,
  lay: SolvedLay,
  side: "bottom" | "top",
): Finding[] {
  // A slope of the wall's outline is meant to run through courses.
  if (isStraight(lay.region[side]) || wall.wall.edges[side].outlined) return [];
  const { low, high } = reachOf(lay, side);
  const { course, room } = roomOf(lay, low, high, side);
  const rake = high - low;
  if (rake <= room) return [];
  return [
    {
      origin: wall.wall.edges[side].origin,
      blocks: [lay.lay, lay.lay.tile, wall.wall],
      message:
        `the ${side} is ${lengthOff(plan, rake, room)} out of level and passes out of course ${lay.below + course}; ` +
        `at most the ${length(plan, room)} that it has there is wanted`,
    },
  ];
}

/** The lowest and the highest point of a side, leaving out what openings take from it. */
function reachOf({ region }: SolvedLay, side: "bottom" | "top"): { low: Nm; high: Nm } {
  const ranges = clearRuns(region, side).map(([from, to]) => rangeBetween(region[side], from, to));
  return {
    low: Math.min(...ranges.map(({ low }) => low)),
    high: Math.max(...ranges.map(({ high }) => high)),
  };
}

/** The course in which a side begins, from its outermost point, and how far it may run inward in it. */
function roomOf(
  { lattice }: SolvedLay,
  low: Nm,
  high: Nm,
  side: "bottom" | "top",
): { course: number; room: Nm } {
  const { y, face } = lattice;
  const module = moduleUp(lattice);
  if (side === "bottom") {
    const course = firstPast(y, face.up, module, low) + 1;
    return { course, room: courseBottom(lattice, course) + face.up - low };
  }
  const course = lastBefore(y, module, high) + 1;
  return { course, room: high - courseBottom(lattice, course) };
}
