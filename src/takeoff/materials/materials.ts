import { type SolvedPlan, type SolvedWall, surfacesOf } from "../../solver/index.js";
import type { Materials } from "../takeoff.js";
import { groutOf } from "./grout.js";
import { membraneOf } from "./membrane.js";
import { mortarOf } from "./mortar.js";
import { sealantOf } from "./sealant.js";
import { doubleSetArea, setAreas, sumOfAreas } from "./set-areas.js";

/** What the walls of a plan take besides tile and trim; of a wall that isn't laid, nothing. */
export function materialsOf({ plan, walls }: SolvedPlan): Materials {
  const isLaid = ({ lays }: SolvedWall): boolean => lays.length > 0;
  const insides = walls.flatMap((wall) => wall.insides.map((inside) => inside.wall));
  const meeting = [...plan.walls, ...insides];
  const laid = surfacesOf(walls)
    .filter(isLaid)
    .map((wall) => ({ wall, areas: wall.lays.map((lay) => setAreas(wall, lay)) }));
  return {
    grout: laid.flatMap(({ wall, areas }) =>
      wall.lays.map((lay, i) => groutOf(wall, lay, areas[i]!, plan.grout)),
    ),
    sealant: laid.flatMap(({ wall }) => sealantOf(wall, meeting, plan)),
    mortar: laid.map(({ wall, areas }) =>
      mortarOf(plan, wall.wall.name, sumOfAreas(areas), doubleSetArea(wall)),
    ),
    membrane: walls.filter(isLaid).map(membraneOf),
  };
}
