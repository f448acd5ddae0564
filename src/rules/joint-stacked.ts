import { divideRounded } from "../measure/index.js";
import type { Limits } from "../model/index.js";
import {
  moduleAcross,
  pieceId,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  type Takeaway,
} from "../solver/index.js";
import { cornerGaps, type PassingWhere } from "./opening-corners.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, type Ratio, ratioLimit, smallerOffset, STACKED } from "./trade.js";
import { length, lengthOff, openingName, ratio } from "./words.js";

/**
 * Upright joints of adjacent courses of a running bond that nearly stand over each other. Two things
 * bring them there: the bond itself, where its offset is that small; and an opening whose sill or
 * head lies on a bed joint, where the courses beside it end in an upright joint along its side and
 * the course that passes under or over has a head joint close to that line. The wall's own sides,
 * where every course ends, don't count.
 */
export const jointStacked: Rule = {
  code: "joint/stacked",
  severity: "warning",
  title: "upright joints of adjacent courses come closer than a quarter of a module",
  source: COMMON_PRACTICE,
  limit: "stacked",
  insides: "own lay",
  check: (wall, plan) =>
    wall.lays
      .filter(({ lay }) => lay.bond.kind === "running")
      .flatMap((lay) => [
        ...findBond(wall, plan, lay),
        ...lay.region.takeaways.flatMap((takeaway) => [
          ...findCorners(wall, plan, { lay, takeaway, where: "under" }),
          ...findCorners(wall, plan, { lay, takeaway, where: "over" }),
        ]),
      ]),
};

function findBond(wall: SolvedWall, plan: SolvedPlan, solved: SolvedLay): Finding[] {
  const { lay, lattice, courses } = solved;
  const limit = ratioLimit(plan.plan.limits, "stacked", STACKED);
  const offset = smallerOffset(lattice);
  if (courses.length < 2 || !isOffsetTooSmall(plan.plan.limits, offset)) return [];
  const found = divideRounded(offset.p * moduleAcross(lattice), offset.q);
  return [
    {
      origin: lay.origin,
      blocks: [lay, lay.tile, wall.wall],
      message:
        `the bond sets the head joints of adjacent courses ${length(plan, found)} apart, ` +
        `${ratio(offset)} of a module; at least ${ratio(limit)} is wanted`,
    },
  ];
}

/** Whether a bond's offset brings head joints of adjacent courses too near to each other. */
export function isOffsetTooSmall(limits: Limits, bond: Ratio): boolean {
  if (limits.stacked?.kind === "off") return false;
  const limit = ratioLimit(limits, "stacked", STACKED);
  const offset = smallerOffset(bond);
  return offset.p * limit.q < limit.p * offset.q;
}

/** The course that passes under or over an opening. */
interface Passing {
  readonly lay: SolvedLay;
  readonly takeaway: Takeaway;
  readonly where: PassingWhere;
}

/** A corner of an opening is only mentioned: no start keeps every corner of every opening clear. */
function findCorners(wall: SolvedWall, plan: SolvedPlan, passing: Passing): Finding[] {
  const { lay, takeaway, where } = passing;
  const { opening } = takeaway;
  const limit = ratioLimit(plan.plan.limits, "stacked", STACKED);
  const module = moduleAcross(lay.lattice);
  const close = cornerGaps(lay, takeaway, where).filter(
    ({ twiceApart }) => twiceApart * limit.q < 2 * module * limit.p,
  );
  if (close.length === 0) return [];
  const apart = divideRounded(Math.min(...close.map(({ twiceApart }) => twiceApart)), 2);
  const wanted = divideRounded(limit.p * module, limit.q);
  const pieces = [...new Set(close.flatMap((gap) => gap.pieces))];
  return [
    {
      origin: opening.origin,
      blocks: [opening, lay.lay, lay.lay.tile, wall.wall],
      severity: "information",
      message:
        `a head joint ${where} ${openingName(opening)} is ${lengthOff(plan, apart, wanted)} off the ` +
        `line of the joint along its side; at least ${length(plan, wanted)}, ${ratio(limit)} of a ` +
        `module, is wanted`,
      pieces: pieces.map((i) => pieceId(lay, i)),
    },
  ];
}
