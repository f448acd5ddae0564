import type { Nm } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import { type LaidEnd, restBehind, restOf } from "../carry-start.js";
import { isStraight } from "../chain.js";
import { type CourseEnd, courseEnd, type EndSide } from "../course-end.js";
import { lastBefore, moduleUp } from "../lattice.js";
import { type CornerSide, cornerGap } from "../region.js";
import type { Lattice } from "../solved.js";
import { coursesMiss } from "./misses.js";

/** A wall as it is laid, at its end at a corner; how its courses end there is worked out once. */
export class BondEnd {
  private readonly known: CourseEnd[] = [];
  /** Whether all courses end at one line. */
  readonly isEven: boolean;
  /** The number of the last course. */
  readonly last: number;

  constructor(
    readonly laid: LaidEnd,
    readonly side: EndSide,
  ) {
    const { left, right, hiddenLeft, hiddenRight } = laid.region;
    const [bare, hidden] = side === "left" ? [left, hiddenLeft] : [right, hiddenRight];
    const { y } = laid.lattice;
    this.last = lastBefore(y, moduleUp(laid.lattice), laid.region.bounds.top) + 1;
    this.isEven = isStraight(bare) && isStraight(hidden ?? bare);
  }

  get lattice(): Lattice {
    return this.laid.lattice;
  }

  /** How a course ends. */
  at(course: number): CourseEnd {
    const { region, lattice } = this.laid;
    const key = this.isEven && !lattice.after ? course % lattice.q : course;
    return (this.known[key] ??= courseEnd(region, lattice, this.side, course));
  }
}

/** What stands between two walls' tile at their corner, along the surface. */
export function gapBetween(plan: Plan, one: BondEnd, other: BondEnd): Nm {
  return cornerGap(plan, cornerSide(one), cornerSide(other));
}

function cornerSide({ laid: { wall, lattice }, side }: BondEnd): CornerSide {
  return { edge: wall.edges[side], joint: lattice.joint };
}

/** Where courses' shifts are rounded to the nanometre, those of two walls may differ by one that no start mends. */
const ROUNDED: Nm = 1;

/**
 * How far a bond is off going on round a corner, nm: over the ways to go on (wrapped with the joint added, the offcut,
 * the joint swallowed; mirrored) the least of what the worst course is off, or what the first tile is short of a whole one
 * in the course where that is least (begun again). `over` is told of the corner. Two tiles have no bond that could go on;
 * where courses don't meet, or joints aren't alike, that of one tile is off by the whole tile. `gap` is what stands between them.
 */
export function bondMiss(over: BondEnd, under: BondEnd, gap: Nm): Nm {
  const { lattice } = over;
  if (!isOneTile(lattice, under.lattice)) return 0;
  const face = lattice.face.across;
  const isOneJoint = lattice.joint === under.lattice.joint;
  if (!isOneJoint || coursesMiss(lattice, under.lattice) > 0) return face;
  const { joint } = lattice;
  const { from, to, ahead } = coursesRound(over, under);
  if (from > to) return 0;
  let [added, offcut, swallowed, mirrored, again] = [0, 0, 0, 0, face];
  for (let course = from; course <= to; course++) {
    const begin = over.at(course);
    const end = under.at(course + ahead);
    added = Math.max(added, Math.abs(begin.shown - restOf(face, end.shown)));
    offcut = Math.max(offcut, Math.abs(begin.shown - restOf(face, end.cut)));
    const behind = restBehind(face, joint, end.shown, gap);
    swallowed = Math.max(swallowed, Math.abs(begin.shown - behind));
    mirrored = Math.max(mirrored, Math.abs(begin.shown - end.shown));
    again = Math.min(again, face - begin.cut);
  }
  const onward = Math.min(added, offcut, swallowed, mirrored);
  const rounded = isRounded(lattice) || isRounded(under.lattice) ? ROUNDED : 0;
  return Math.min(onward > rounded ? onward : 0, again);
}

/** Whether some course's shift is no whole number of nanometres. */
function isRounded({ p, q, face, joint }: Lattice): boolean {
  return (p * (face.across + joint)) % q !== 0;
}

/** Whether two lays have tile of one face: only then a bond can go on. */
export function isOneTile(a: Pick<Lattice, "face">, b: Pick<Lattice, "face">): boolean {
  return a.face.across === b.face.across && a.face.up === b.face.up;
}

/** The courses that run round a corner, as many as the bonds differ in; `ahead` is how far the other wall's numbers are. */
function coursesRound(
  over: BondEnd,
  under: BondEnd,
): { readonly from: number; readonly to: number; readonly ahead: number } {
  const [own, other] = [over.lattice, under.lattice];
  const ahead = Math.round((own.y - other.y) / moduleUp(own));
  const from = Math.max(1, 1 - ahead);
  const last = Math.min(over.last, under.last - ahead);
  const areAlike = over.isEven && under.isEven;
  return { from, to: areAlike ? Math.min(last, from + own.q * other.q - 1) : last, ahead };
}
