import type { WallCuts } from "../takeoff.js";

/** The cuts of each wall, and after them those of the surfaces inside its openings. */
export function allCuts(walls: readonly WallCuts[]): readonly WallCuts[] {
  return walls.flatMap((wall) => [wall, ...wall.insides]);
}
