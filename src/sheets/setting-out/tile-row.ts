import type { Nm } from "../../measure/index.js";
import { courseShift, firstPast, lastBefore, type Lattice } from "../../solver/index.js";

/** Tiles in a line: a course across the wall, or all courses up it. */
export interface TileRow {
  /** Where one of its tiles begins. */
  readonly origin: Nm;
  readonly face: Nm;
  readonly joint: Nm;
}

/** The tiles of a course, from left to right. */
export function acrossRow(lattice: Lattice, course: number): TileRow {
  const { x, face, joint } = lattice;
  return { origin: x + courseShift(lattice, course), face: face.across, joint };
}

/** The courses, from the bottom up. */
export function upRow({ y, face, joint }: Lattice): TileRow {
  return { origin: y, face: face.up, joint };
}

/** What a border leaves of the first tile beyond it (to its right, or over it); at most the face. */
export function restPast({ origin, face, joint }: TileRow, border: Nm): Nm {
  const begin = origin + firstPast(origin, face, face + joint, border) * (face + joint);
  return begin + face - Math.max(border, begin);
}

/** What a border leaves of the last tile before it (to its left, or under it); at most the face. */
export function restBefore({ origin, face, joint }: TileRow, border: Nm): Nm {
  const begin = origin + lastBefore(origin, face + joint, border) * (face + joint);
  return Math.min(border, begin + face) - begin;
}

/** Where the second tile beyond the border begins: the first one is the end's, whole or cut. */
export function secondPast({ origin, face, joint }: TileRow, border: Nm): Nm {
  const module = face + joint;
  return origin + (firstPast(origin, face, module, border) + 1) * module;
}

/** Where the last tile but one before the border ends. */
export function secondBefore({ origin, face, joint }: TileRow, border: Nm): Nm {
  const module = face + joint;
  return origin + lastBefore(origin, module, border) * module - joint;
}
