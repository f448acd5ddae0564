import { divideRounded, type Nm } from "../measure/index.js";
import type { Lay } from "../model/index.js";
import type { Box } from "./box.js";
import type { Lattice } from "./solved.js";

/** Face and joint together, across. */
export function moduleAcross(lattice: Lattice): Nm {
  return lattice.face.across + lattice.joint;
}

/** Face and joint together, up. */
export function moduleUp(lattice: Lattice): Nm {
  return lattice.face.up + (lattice.bed ?? lattice.joint);
}

/** The lattice of a lay whose course 1 has its bottom at `y` and a tile's left edge at `x`. */
export function latticeOf(lay: Lay, joint: Nm, x: Nm, y: Nm): Lattice {
  const { p, q } = lay.bond.kind === "running" ? lay.bond : { p: 0, q: 1 };
  return { x, y, face: lay.tile.face, joint, p, q };
}

/**
 * How far course n stands to the right of course 1. Each course of the bond is rounded once to the nanometre,
 * so that a bond which goes on from another lay stands where it would if both were one.
 */
export function courseShift(lattice: Lattice, course: number): Nm {
  const { after } = lattice;
  if (!after) return bondShift(lattice, course - 1);
  return bondShift(lattice, course - 1 + after) - bondShift(lattice, after);
}

function bondShift(lattice: Lattice, courses: number): Nm {
  const step = ((courses % lattice.q) + lattice.q) % lattice.q;
  return divideRounded(step * lattice.p * moduleAcross(lattice), lattice.q);
}

/** The bottom of course n. */
export function courseBottom(lattice: Lattice, course: number): Nm {
  return lattice.y + (course - 1) * moduleUp(lattice);
}

/** The number of the lowest tile in a row from `origin` whose far end lies past `edge`. */
export function firstPast(origin: Nm, face: Nm, module: Nm, edge: Nm): number {
  return Math.floor((edge - origin - face) / module) + 1;
}

/** The number of the last tile in a row from `origin` that begins before `edge`. */
export function lastBefore(origin: Nm, module: Nm, edge: Nm): number {
  return Math.ceil((edge - origin) / module) - 1;
}

/** How many tiles of the lattice may touch a box, at most. */
export function cellsWithin(lattice: Lattice, box: Box): number {
  const across = Math.max(0, box.right - box.left) / moduleAcross(lattice) + 2;
  const up = Math.max(0, box.top - box.bottom) / moduleUp(lattice) + 2;
  return Math.ceil(across) * Math.ceil(up);
}
