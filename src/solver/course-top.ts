import type { Nm } from "../measure/index.js";
import type { Lay } from "../model/index.js";
import { courseBottom, firstPast, latticeOf, moduleUp } from "./lattice.js";
import { type Ground, upOrigin } from "./start.js";

/**
 * The top of a lay's course of that number. Its courses begin where the plan says, else with a full
 * course from the bottom: one can't count courses whose height is still open.
 */
export function courseTop(ground: Ground & { readonly lay: Lay }, number: number): Nm {
  const { lay, joint, region } = ground;
  const y = upOrigin(ground, lay.up ?? { kind: "full-course", from: "bottom" });
  const lattice = latticeOf(lay, joint, 0, y);
  const { up } = lattice.face;
  const lowest = firstPast(y, up, moduleUp(lattice), region.bounds.bottom);
  return courseBottom(lattice, lowest + number) + up;
}
