import type { Nm } from "../measure/index.js";
import { moduleUp, restBehind, restOf } from "../solver/index.js";
import type { Corner } from "./corner.js";
import { twiceMiss } from "./course-miss.js";
import { type ShownEnd, shownEnd } from "./shown-end.js";

/**
 * How a bond may go on round a corner. Wrapped: the tile that ends at the corner goes on behind it,
 * either with the corner's joint added to the tile (`added`; `offcut` where what the saw left over is
 * used, so that the strip which the other tile covers counts as well), or with the joint taken out of the
 * tile (`swallowed`), so that the pattern runs on as if the two walls were one. `mirrored`: both walls
 * show the same width at the corner.
 */
export type BondWay = "added" | "offcut" | "swallowed" | "mirrored";

export const BOND_WAYS: readonly BondWay[] = ["added", "offcut", "swallowed", "mirrored"];

/** One course at a corner: how it ends on the covered wall, how it begins on the other. */
export interface CornerCourse {
  /** The covering wall's course. */
  readonly number: number;
  readonly end: ShownEnd;
  readonly begin: ShownEnd;
  /** The width that each way wants of the first tile. */
  readonly wanted: Readonly<Record<BondWay, Nm>>;
}

/**
 * The courses that run round a corner, where both walls have the same tile and joint and their
 * courses meet; none else, since no bond can go on there.
 */
export function cornerCourses({ over, under, gap }: Corner): CornerCourse[] {
  const { lattice } = over.lay;
  const { lattice: other } = under.lay;
  const alike =
    lattice.face.across === other.face.across &&
    lattice.face.up === other.face.up &&
    lattice.joint === other.joint;
  if (!alike || twiceMiss(over.lay, under.lay) !== 0) return [];
  const first = under.lay.courses[0]?.bottom ?? 0;
  return over.lay.courses.flatMap(({ number, bottom }, at) => {
    const otherAt = (bottom - first) / moduleUp(other);
    if (!under.lay.courses[otherAt]) return [];
    const begin = shownEnd(over.lay, at, over.side);
    const end = shownEnd(under.lay, otherAt, under.side);
    if (!begin || !end) return [];
    const wanted = {
      added: restOf(lattice.face.across, end.shown),
      offcut: restOf(lattice.face.across, end.cut),
      swallowed: restBehind(lattice.face.across, lattice.joint, end.shown, gap),
      mirrored: end.shown,
    };
    return [{ number, begin, end, wanted }];
  });
}

/** How far the worst course is off the bond that one way wants. */
export function worstOff(courses: readonly CornerCourse[], way: BondWay): Nm {
  return Math.max(...courses.map((course) => offWay(course, way)));
}

export function offWay({ begin, wanted }: CornerCourse, way: BondWay): Nm {
  return Math.abs(begin.shown - wanted[way]);
}
