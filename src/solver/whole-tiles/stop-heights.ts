import type { Nm } from "../../measure/index.js";
import { isStraight } from "../chain.js";
import { moduleUp } from "../lattice.js";
import type { SolvedLay, SolvedWall } from "../solved.js";

/** Heights of the bare wall's top at which its last course is whole, nm from the level line. */
export interface StopHeights {
  /** Whether its last course is whole as it is. */
  readonly isWhole: boolean;
  /** The nearest one at or below the wall's top, and the next above; null where no course is below. */
  readonly below: Nm | null;
  readonly above: Nm;
}

/**
 * Works back from the tile to where the wall's tile stops: at a whole course, then the top's joint
 * or trim. null where the top is measured, for a whole course can't follow it.
 */
export function stopHeights({ wall, region }: SolvedWall, lay: SolvedLay): StopHeights | null {
  if (!isStraight(region.top)) return null;
  const { lattice } = lay;
  const top = region.top.value[0]!;
  const drawnIn = wall.size.up - top;
  const module = moduleUp(lattice);
  const courses = Math.floor((top - lattice.y - lattice.face.up) / module) + 1;
  const below = lattice.y + (courses - 1) * module + lattice.face.up + drawnIn;
  return {
    isWhole: courses >= 1 && below === wall.size.up,
    below: courses >= 1 ? below : null,
    above: below + module,
  };
}
