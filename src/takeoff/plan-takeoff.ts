import type { SolvedPlan } from "../solver/index.js";
import { allCuts } from "./cuts/all-cuts.js";
import { allToCut, cutsOf, surfaceToCut } from "./cuts/surface-to-cut.js";
import { wallMarks } from "./labels/wall-marks.js";
import { materialsOf } from "./materials/materials.js";
import { kerfOf, sawWork } from "./saw-work.js";
import type { Takeoff } from "./takeoff.js";
import { tileTakeoffs } from "./tiles/tile-takeoff.js";
import { trimTakeoffs } from "./trims/trim-takeoffs.js";

/**
 * What a solved plan takes: the cuts of each wall, the tiles they come from, and what to buy. Each part
 * is worked out when it is first asked for, since who counts tiles wants no settings of a saw.
 */
export function takeoff(solved: SolvedPlan): Takeoff {
  const { plan } = solved;
  const marks = wallMarks(plan.walls.map((wall) => wall.name));
  const cut = solved.walls.map((wall, i) => surfaceToCut(wall, marks[i]!));
  const made: { -readonly [Part in keyof Takeoff]?: Takeoff[Part] } = {};
  return {
    get walls() {
      return (made.walls ??= cut.map((surface) => cutsOf(plan, surface)));
    },
    get tiles() {
      return (made.tiles ??= tileTakeoffs(solved, cut.flatMap(allToCut), kerfOf(plan)));
    },
    get trims() {
      return (made.trims ??= trimTakeoffs(solved));
    },
    get materials() {
      return (made.materials ??= materialsOf(solved));
    },
    get saw() {
      return (made.saw ??= sawWork(solved, allCuts(this.walls)));
    },
  };
}
