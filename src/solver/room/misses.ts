import type { Nm } from "../../measure/index.js";
import type { Opening } from "../../model/index.js";
import type { Box } from "../box.js";
import { moduleAcross, moduleUp } from "../lattice.js";
import type { Lattice, Region } from "../solved.js";
import { highestPoint, lowestPoint } from "../start.js";
import { offEdges, offJoint } from "../whole-tiles/joints-met.js";

/** Where bed joints stand: what two lays' courses are compared by. */
export type Courses = Pick<Lattice, "y" | "face" | "joint">;

/**
 * How bed joints of two lays miss each other, nm; half a nanometre is none. Where neither module is a
 * whole multiple of the other they can't meet: then it is the height of the smaller tile, whatever the
 * joint, so that no narrower one seems to come nearer.
 */
export function coursesMiss(a: Courses, b: Courses): Nm {
  const modules = [a.face.up + a.joint, b.face.up + b.joint];
  const [small, large] = [Math.min(...modules), Math.max(...modules)];
  if (large % small !== 0) return Math.min(a.face.up, b.face.up);
  const twice = 2 * a.y - a.joint - (2 * b.y - b.joint);
  return Math.floor(aroundZero(twice, 2 * small) / 2);
}

/** How far the nearest middle of course 1's tiles and joints is from an opening's middle, nm. */
export function centreMiss(lattice: Lattice, { at, size }: Opening): Nm {
  const twice = 2 * moduleAcross(lattice);
  const middle = 2 * at.x + size.across;
  const tile = aroundZero(middle - 2 * lattice.x - lattice.face.across, twice);
  const joint = aroundZero(middle - 2 * lattice.x + lattice.joint, twice);
  return Math.floor(Math.min(tile, joint) / 2);
}

/** How far the sill or the head of what an opening takes is from a bed joint, nm. */
export function openingMiss(lattice: Lattice, box: Box, at: "sill" | "head"): Nm {
  return offJoint({ lattice, courses: [] }, box, at === "sill" ? "bottom" : "top");
}

/** Whether the sill or the head of what an opening takes lies in a region: only there a lay's courses meet it. */
export function isEdgeIn(
  { bounds }: Pick<Region, "bounds">,
  box: Box,
  at: "sill" | "head",
): boolean {
  const edge = at === "sill" ? box.bottom : box.top;
  return bounds.bottom <= edge && edge <= bounds.top;
}

/** How far the lowest course is from being whole at the lowest point, or the highest at the highest; nm. */
export function sideMiss(lattice: Lattice, region: Region, at: "bottom" | "top"): Nm {
  const place = at === "bottom" ? lowestPoint(region) : highestPoint(region);
  return offEdges(place - lattice.y, lattice.face.up, moduleUp(lattice), at === "top");
}

/** How far a number is from the nearest whole multiple of a module. */
function aroundZero(number: Nm, module: Nm): Nm {
  const over = Math.abs(number) % module;
  return Math.min(over, module - over);
}
