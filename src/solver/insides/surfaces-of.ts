import type { SolvedInside, SolvedWall } from "../solved.js";

/** All that is tiled: each wall, and after it the surfaces inside its openings. */
export function surfacesOf(walls: readonly SolvedWall[]): readonly SolvedWall[] {
  return walls.flatMap((wall) => [wall, ...wall.insides]);
}

/** Whether it is a surface inside an opening, and no wall. */
export function isInside(surface: SolvedWall): surface is SolvedInside {
  return "face" in surface;
}
