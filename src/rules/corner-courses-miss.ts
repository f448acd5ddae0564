import { moduleUp, type SolvedPlan } from "../solver/index.js";
import { bandsOf } from "./band.js";
import { type Corner, cornersOver } from "./corner.js";
import { twiceMiss } from "./course-miss.js";
import type { Finding, Rule } from "./rule.js";
import { COURSES, lengthLimit } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * Courses of two walls that are not at one height at their corner. Told of the wall whose tile
 * covers the other's, since that one is set last. Bed joints count by their middles; where one module is
 * a whole multiple of the other, each joint of the larger tile meets one of the smaller. Where it
 * isn't, no start brings the courses together: that is only mentioned.
 */
export const cornerCoursesMiss: Rule = {
  code: "corner/courses-miss",
  severity: "warning",
  title: "the courses of two walls are not at one height at their corner",
  source: COURSES.source,
  limit: "courses",
  check: (wall, plan) =>
    cornersOver(wall, plan)
      .filter((corner) => !isAtBand(corner))
      .flatMap((corner) => findMiss(plan, corner)),
};

/** A band meets the other wall's band, if any: `band/height` tells of it. */
function isAtBand({ over, under }: Corner): boolean {
  return [over, under].some(({ wall, lay }) => bandsOf(wall).some((band) => band.lay === lay));
}

function findMiss(plan: SolvedPlan, corner: Corner): Finding[] {
  const { over, under, edge } = corner;
  const most = lengthLimit(plan.plan.limits, "courses", COURSES.mostMiss);
  const twice = twiceMiss(over.lay, under.lay);
  // Each middle may be half a nanometre off its true place: a half between them is no miss.
  const nm = Math.floor(Math.abs(twice ?? 0) / 2);
  if (twice !== null && nm <= most) return [];
  const where = `at the ${over.side} corner`;
  const other = `those of ${under.wall.wall.name}`;
  const { lay } = over.lay;
  const place = {
    origin: edge.origin,
    blocks: [lay, lay.tile, over.wall.wall, under.wall.wall],
  };
  if (twice === null) {
    const [module, otherModule] = [over, under].map((each) =>
      length(plan, moduleUp(each.lay.lattice)),
    );
    const message =
      `${where} courses of ${module!} can't meet ${other}, which are ${otherModule!}; ` +
      `one module, or a whole multiple of it, is wanted`;
    return [{ ...place, severity: "information", message }];
  }
  const miss = lengthOff(plan, nm, most);
  const wanted = most === 0 ? "courses that meet are" : `at most ${length(plan, most)} is`;
  const message = `${where} the courses are ${miss} ${twice > 0 ? "above" : "below"} ${other}; ${wanted} wanted`;
  return [{ ...place, message }];
}
