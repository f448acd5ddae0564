import type { Nm } from "../../measure/index.js";
import {
  type Course,
  courseBottom,
  moduleUp,
  rangeBetween,
  type SolvedPlan,
  type SolvedWall,
} from "../../solver/index.js";
import { bareSideOf } from "./bare-sides.js";
import { isOverSet, layToCome } from "./lay-to-come.js";

/** A level line that is struck on a wall, and where it stands over the bare wall's bottom. */
export interface LevelLine {
  /** From the plan's level line (its datum). */
  readonly y: Nm;
  /** The course whose bottom stands on it; null for the plan's own datum. */
  readonly course: number | null;
  /** Over the lowest and the highest point of the bottom; negative where the line lies under it. */
  readonly overLow: PointUnder;
  readonly overHigh: PointUnder;
}

export interface PointUnder {
  /** How far from the wall's left. */
  readonly at: Nm;
  readonly rise: Nm;
}

/** A height over the low and the high point of a wall's bottom. */
export function levelLine(wall: SolvedWall, y: Nm, course: number | null): LevelLine {
  const bare = bareSideOf(wall.wall, "bottom");
  const { across } = wall.wall.size;
  const { low, high } = rangeBetween(bare, 0, across);
  const at = (value: Nm): Nm =>
    bare.at.find((place, i) => bare.value[i] === value && place >= 0 && place <= across) ?? 0;
  return {
    y,
    course,
    overLow: { at: at(low), rise: y - low },
    overHigh: { at: at(high), rise: y - high },
  };
}

/**
 * The line that a wall is set from, over courses that are set the bottom of the first to come: the bottom of the lowest course that its bottom doesn't cut, where
 * a ledger goes; where that is course 1, which stands too low for a line, of the next one. All walls share one where each of them has a course there, since the level
 * line runs round all walls (BS 5385-1:2018 cl. 7.1.5, quoted in
 * tilersforums.com/threads/tiling-standards.40411). null where no course is laid.
 */
export function workingLine(plan: SolvedPlan, wall: SolvedWall): LevelLine | null {
  const own = ownLine(wall);
  if (own === null) return null;
  const shared = goesOn(wall) ? null : sharedLine(plan);
  const y = shared ?? own;
  return levelLine(wall, y, courseAt(wall, y));
}

function sharedLine({ walls }: SolvedPlan): Nm | null {
  const laid = walls.filter((wall) => ownLine(wall) !== null && !goesOn(wall));
  const highest = Math.max(...laid.map((wall) => ownLine(wall)!));
  return laid.every((wall) => courseAt(wall, highest) !== null) ? highest : null;
}

/** The lowest course to come that the wall's bottom doesn't cut anywhere; null where there is none. */
export function startCourse(wall: SolvedWall): Course | null {
  const lay = layToCome(wall);
  if (!lay) return null;
  const { region } = wall;
  const { high } = rangeBetween(region.bottom, region.bounds.left, region.bounds.right);
  return lay.courses.find(({ bottom }) => bottom >= high) ?? null;
}

function ownLine(wall: SolvedWall): Nm | null {
  const start = startCourse(wall);
  if (start === null) return null;
  // What goes on over set courses has its line there, however low that is.
  const isLow = start.number === 1 && !goesOn(wall);
  const next = isLow ? layToCome(wall)!.courses[1] : undefined;
  return (next ?? start).bottom;
}

/** Whether what is to come on a wall stands on courses that are set: they can't move to a line of other walls. */
function goesOn(wall: SolvedWall): boolean {
  const lay = layToCome(wall);
  return lay !== null && isOverSet(wall, lay);
}

/** The number of the course to come whose bottom is at that height. */
function courseAt(wall: SolvedWall, y: Nm): number | null {
  const lay = layToCome(wall);
  if (!lay) return null;
  const number = (y - lay.lattice.y) / moduleUp(lay.lattice) + 1;
  const found = lay.courses.some((course) => course.number === number);
  return found && courseBottom(lay.lattice, number) === y ? lay.below + number : null;
}
