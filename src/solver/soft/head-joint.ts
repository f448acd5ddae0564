import type { Nm } from "../../measure/index.js";
import { courseShift, moduleAcross } from "../lattice.js";
import type { SolvedLay } from "../solved.js";
import type { SoftMiss } from "./soft-run.js";

/** A head joint's two sides. */
export interface HeadJoint {
  readonly from: Nm;
  readonly to: Nm;
}

/**
 * The head joint nearest to a place that goes through all courses of a block's lays, which stand on each other,
 * with tile at both sides; of two as near the left one. Else why there is none.
 */
export function headJointNear(lays: readonly SolvedLay[], x: Nm): HeadJoint | SoftMiss {
  const [first] = lays;
  if (!first || lays.some(isShifted)) return "shifted";
  const { left, right } = first.region.bounds;
  if (x <= left || x >= right) return "no-head-joint";
  const { face, joint } = first.lattice;
  const module = moduleAcross(first.lattice);
  const base = firstTile(first) + face.across;
  // One of the lattice's joints has tile at its left as soon as it begins past the side.
  const least = Math.floor((left - base) / module) + 1;
  const most = Math.ceil((right - joint - base) / module) - 1;
  if (least > most) return "no-head-joint";
  const near = Math.ceil((2 * (x - base) - joint - module) / (2 * module));
  const from = base + Math.min(Math.max(near, least), most) * module;
  const isInLine = (lay: SolvedLay): boolean =>
    lay.joint === joint &&
    (from - firstTile(lay) - lay.lattice.face.across) % moduleAcross(lay.lattice) === 0;
  return lays.every(isInLine) ? { from, to: from + joint } : "out-of-line";
}

/** The left edge of one of the tiles that stand on each other in all courses. */
function firstTile({ lattice }: SolvedLay): Nm {
  return lattice.x + courseShift(lattice, 1);
}

function isShifted({ lattice, courses }: SolvedLay): boolean {
  const module = moduleAcross(lattice);
  const shift = courseShift(lattice, 1);
  return courses.some(({ number }) => (courseShift(lattice, number) - shift) % module !== 0);
}
