import type { Nm } from "../../src/measure/index.js";
import type { Centre, Wall } from "../../src/model/index.js";
import type { Box, SolvedLay } from "../../src/solver/index.js";

/** The tile of course n that stands k modules to the right of course 1's. */
export function tileAt(laid: SolvedLay, course: number, k: number): Box {
  const { face, joint, bed = joint, after = 0, x, y, p, q } = laid.lattice;
  const module = face.across + joint;
  // The bond counts on from the lay that it goes on from.
  const shifted = (courses: number) => roundedRatio((courses % q) * p * module, q);
  const shift = shifted(course - 1 + after) - shifted(after);
  const left = x + shift + k * module;
  const bottom = y + (course - 1) * (face.up + bed);
  return { left, bottom, right: left + face.across, top: bottom + face.up };
}

/** Which tile of its course a place lies in (or the joint right of it). */
export function tileNumberAt(laid: SolvedLay, course: number, x: Nm): number {
  const { face, joint } = laid.lattice;
  return Math.floor((x - tileAt(laid, course, 0).left) / (face.across + joint));
}

/**
 * Twice the place that `across` puts the middle of a tile or joint at, or null for a full tile:
 * the middle of the bare wall, of an opening, or the place named.
 */
export function doubledMiddle(wall: Wall, centre: Centre): Nm {
  if (centre.on === "wall") return wall.size.across;
  if (centre.on === "place") return 2 * centre.x;
  return 2 * centre.opening.at.x + centre.opening.size.across;
}

function roundedRatio(numerator: number, denominator: number): number {
  return Number((2n * BigInt(numerator) + BigInt(denominator)) / (2n * BigInt(denominator)));
}
