import { cornersOver, twiceMiss } from "../../rules/index.js";
import type { SolvedPlan } from "../../solver/index.js";

/** At how many of the corners where tile meets tile the courses stand at one height. */
export interface CornersMet {
  readonly met: number;
  readonly of: number;
}

/** The corners of a plan, or those that a wall of it has; null where there is none. */
export function cornersMet(solved: SolvedPlan, wall: string | null = null): CornersMet | null {
  const corners = solved.walls
    .flatMap((each) => cornersOver(each, solved))
    .filter(({ over, under }) => [over, under].some((each) => isOf(each.wall.wall.name, wall)));
  if (corners.length === 0) return null;
  const met = corners.filter(({ over, under }) => {
    const twice = twiceMiss(over.lay, under.lay);
    // Each middle may be half a nanometre off its true place: a half between them is no miss.
    return twice !== null && Math.abs(twice) < 2;
  });
  return { met: met.length, of: corners.length };
}

function isOf(name: string, wall: string | null): boolean {
  return wall === null || name === wall;
}
