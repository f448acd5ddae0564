import { countingLay, type SolvedLay, type SolvedWall } from "../../solver/index.js";

/** Whether a lay's courses are counted with the wall's: those of a panel are counted by themselves. */
export function isMain(lay: SolvedLay): boolean {
  return countingLay(lay) === null;
}

/**
 * How many courses of a wall come before a lay's first one, so that each course has a number of its own in
 * a picture: those of panels come after the wall's.
 */
export function coursesBefore(solved: SolvedWall, lay: SolvedLay): number {
  if (isMain(lay)) return lay.below;
  const earlier = solved.lays.slice(0, solved.lays.indexOf(lay));
  return earlier.reduce((sum, { courses }) => sum + courses.length, 0);
}
