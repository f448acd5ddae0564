import type { Nm } from "../measure/index.js";
import { moduleUp, type SolvedLay } from "../solver/index.js";

/**
 * How the bed joints of two lays stand to each other: twice the height of the first lay's over the
 * nearest of the other's, so that half a nanometre is not lost; null where the courses can't meet,
 * since neither module is a whole multiple of the other.
 */
export function twiceMiss(lay: SolvedLay, other: SolvedLay): Nm | null {
  const modules = [moduleUp(lay.lattice), moduleUp(other.lattice)];
  const [small, large] = [Math.min(...modules), Math.max(...modules)];
  if (large % small !== 0) return null;
  const apart = twiceBed(lay) - twiceBed(other);
  const over = apart - 2 * small * Math.floor(apart / (2 * small));
  return over > small ? over - 2 * small : over;
}

/** Twice the middle of the bed joint under course 1. */
function twiceBed({ lattice: { y, joint } }: SolvedLay): Nm {
  return 2 * y - joint;
}
