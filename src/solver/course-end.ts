import type { Nm } from "../measure/index.js";
import { rangeBetween } from "./chain.js";
import { courseBottom, courseShift, firstPast, lastBefore, moduleAcross } from "./lattice.js";
import type { Lattice, Region } from "./solved.js";

export type EndSide = "left" | "right";

/** The tile with which a course ends at a side, if nothing cuts it but the side; nm. */
export interface CourseEnd {
  /** How much of it is seen, at the narrow end where the side slopes. */
  readonly shown: Nm;
  /** How wide it is cut, with what another wall's tile hides of it. */
  readonly cut: Nm;
}

/** How a course ends at a side. */
export function courseEnd(
  region: Region,
  lattice: Lattice,
  side: EndSide,
  course: number,
): CourseEnd {
  const { face } = lattice;
  const module = moduleAcross(lattice);
  const origin = lattice.x + courseShift(lattice, course);
  const bottom = courseBottom(lattice, course);
  const line = endLine(region, side, bottom, bottom + face.up);
  const bare = bareLine(region, side, bottom, bottom + face.up);
  const place =
    side === "right"
      ? lastBefore(origin, module, line)
      : firstPast(origin, face.across, module, line);
  const left = origin + place * module;
  return {
    shown: reachTo(line, side, left, face.across),
    cut: reachTo(bare, side, left, face.across),
  };
}

/** How far a tile from `left` reaches to an end at a side. */
function reachTo(end: Nm, side: EndSide, left: Nm, face: Nm): Nm {
  return Math.min(face, side === "right" ? end - left : left + face - end);
}

/** Where what is seen of a course ends at a side; at the narrow end where that slopes. */
export function endLine(region: Region, side: EndSide, bottom: Nm, top: Nm): Nm {
  return side === "left"
    ? rangeBetween(region.hiddenLeft ?? region.left, bottom, top).high
    : rangeBetween(region.hiddenRight ?? region.right, bottom, top).low;
}

/** Where a course's tile ends at a side, seen or not; at the wide end where that slopes. */
export function bareLine(region: Region, side: EndSide, bottom: Nm, top: Nm): Nm {
  return side === "left"
    ? rangeBetween(region.left, bottom, top).low
    : rangeBetween(region.right, bottom, top).high;
}
