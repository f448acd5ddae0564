import type { Nm } from "../measure/index.js";
import type { Lay, SetCourses } from "../model/index.js";
import { courseTop } from "./course-top.js";
import { firstPast, latticeOf, moduleUp } from "./lattice.js";
import type { Lattice, SetStand } from "./solved.js";
import type { Ground } from "./start.js";

/** A lay that is set, on what of the wall it has before its last course ends it. */
export type SetGround = Ground & { readonly lay: Lay & { readonly set: SetCourses } };

export function isSet(lay: Lay): lay is SetGround["lay"] {
  return lay.set !== null;
}

/** Whether one of a lay's own courses is on the wall already. */
export function isSetCourse({ lay: { set } }: { readonly lay: Lay }, course: number): boolean {
  return set !== null && set.from <= course && course <= set.to;
}

/**
 * Where the courses of a lay stand that are set. Their measured top says where what is over them begins; between
 * the first that is set, which stays where the plan has it, and the last one the bed joints share out what the
 * top is off. A top that these joints can't come to is left out (`reached` says so): no tile overlaps another.
 */
export function setStand(ground: SetGround): SetStand {
  const { lay, joint, region } = ground;
  const { from, to, tops } = lay.set;
  const face = lay.tile.face.up;
  const planned = courseTop(ground, to);
  const bottom = courseTop(ground, from) - face;
  const measured = tops.length === 0 ? null : Math.max(...tops.map(({ y }) => y));
  const asPlanned: SetStand = { planned, top: planned, reached: true, from: bottom, bed: joint };
  if (measured === null) return asPlanned;
  const off = measured - planned;
  const bed = to === from ? joint : joint + Math.floor(off / (to - from));
  // The same courses are to stand in the region, whatever their bed joints.
  const lowest = firstPast(bottom, face, face + bed, region.bounds.bottom);
  const spreads = to > from && bed >= 0 && lowest === 1 - from;
  const reached = Math.abs(off) < face + joint && (spreads || off >= -joint);
  if (!reached) return { ...asPlanned, reached: false };
  return { ...asPlanned, top: measured, bed: spreads ? bed : joint };
}

/** The lattice of set courses, their bed joints as wide as they came to be. */
export function setLattice(ground: SetGround, { from, bed }: SetStand, x: Nm): Lattice {
  return { ...latticeOf(ground.lay, ground.joint, x, from), bed };
}

/** The top of the last set course as it is drawn: under the measured one by less than a nanometre a course. */
export function drawnTop({ lay, joint }: SetGround, stand: SetStand): Nm {
  const { from, to } = lay.set;
  const lattice = { ...latticeOf(lay, joint, 0, stand.from), bed: stand.bed };
  return stand.from + (to - from) * moduleUp(lattice) + lay.tile.face.up;
}
