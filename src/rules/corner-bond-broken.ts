import { pieceId, type SolvedPlan } from "../solver/index.js";
import { type Corner, cornersOver, type CornerWall } from "./corner.js";
import { BOND_WAYS, type CornerCourse, cornerCourses, offWay, worstOff } from "./corner-bond.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, mostWrapOff } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * A bond that at an inside corner is neither wrapped nor mirrored, nor begun again: a whole tile of the
 * covering wall at the corner, in one course at least, or the plan's own wish for one.
 */
export const cornerBondBroken: Rule = {
  code: "corner/bond-broken",
  severity: "information",
  title: "at a corner the bond is neither wrapped, mirrored nor begun again",
  source: COMMON_PRACTICE,
  limit: "wrap",
  check: (wall, plan) => cornersOver(wall, plan).flatMap((corner) => findBroken(plan, corner)),
};

/** Whether the plan says of one wall how its bond goes on from the other. */
function isCarried({ over, under }: Corner): boolean {
  const goesOn = (from: CornerWall, to: CornerWall): boolean => {
    const { across } = to.lay;
    return "wall" in across && across.wall === from.wall.wall.name;
  };
  return goesOn(under, over) || goesOn(over, under);
}

function isBegunAgain({ over: { lay, side } }: Corner, courses: readonly CornerCourse[]): boolean {
  const stated = lay.lay.across;
  if (stated?.kind === "full-tile" && stated.from === side) return true;
  return courses.some(({ begin }) => begin.cut === lay.lattice.face.across);
}

function findBroken(plan: SolvedPlan, corner: Corner): Finding[] {
  const { over, under, edge } = corner;
  const courses = cornerCourses(corner);
  if (courses.length === 0 || isCarried(corner) || isBegunAgain(corner, courses)) return [];
  const most = mostWrapOff(plan.plan.limits);
  const nearest = BOND_WAYS.reduce((a, b) => (worstOff(courses, b) < worstOff(courses, a) ? b : a));
  const off = courses.filter((course) => offWay(course, nearest) > most);
  if (off.length === 0) return [];
  const worst = off.reduce((a, b) => (offWay(b, nearest) > offWay(a, nearest) ? b : a));
  const { added, swallowed, mirrored } = worst.wanted;
  const { lay } = over.lay;
  return [
    {
      origin: edge.origin,
      blocks: [lay, lay.tile, over.wall.wall, under.wall.wall],
      message:
        `from the ${over.side} corner course ${over.lay.below + worst.number} starts with ` +
        `${lengthOff(plan, worst.begin.shown, worst.wanted[nearest])} beside ${length(plan, worst.end.shown)} of ` +
        `${under.wall.wall.name}; ${length(plan, added)} or ${length(plan, swallowed)} (wrapped, the ` +
        `corner's joint added or swallowed), ${length(plan, mirrored)} (mirrored) or a whole tile (begun ` +
        `again) is wanted, to within ${length(plan, most)}`,
      pieces: off.map(({ begin }) => pieceId(over.lay, begin.piece)),
    },
  ];
}
