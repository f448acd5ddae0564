import type { SolvedPlan } from "../solver/index.js";
import { wallCuts } from "./cuts/wall-cuts.js";
import { wallMarks } from "./labels/wall-marks.js";
import { materialsOf } from "./materials/materials.js";
import { sawWork } from "./saw-work.js";
import type { Takeoff } from "./takeoff.js";
import { tileTakeoffs } from "./tiles/tile-takeoff.js";
import { trimTakeoffs } from "./trims/trim-takeoffs.js";

/** What a solved plan takes: the cuts of each wall, the tiles they come from, and what to buy. */
export function takeoff(solved: SolvedPlan): Takeoff {
  const marks = wallMarks(solved.plan.walls.map((wall) => wall.name));
  const walls = solved.walls.map((wall, i) => wallCuts(solved.plan, wall, marks[i]!));
  const saw = sawWork(solved, walls);
  return {
    walls,
    tiles: tileTakeoffs(solved, walls, saw.kerf),
    trims: trimTakeoffs(solved),
    materials: materialsOf(solved),
    saw,
  };
}
