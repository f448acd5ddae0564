import type { Unit } from "../measure/index.js";
import { softPlace } from "../rules/index.js";
import { softJoints, type SolvedWall } from "../solver/index.js";

/** Where a wall's tile has soft joints, each once: `at 84 13/16 in`, `over course 4`. */
export function softPlaces(wall: SolvedWall, units: Unit): string[] {
  return [...new Set(softJoints(wall).runs.map(({ name }) => softPlace(name, units)))];
}
