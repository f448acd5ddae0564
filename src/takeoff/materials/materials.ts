import type { SolvedPlan } from "../../solver/index.js";
import type { Materials } from "../takeoff.js";
import { groutOf } from "./grout.js";
import { membraneOf } from "./membrane.js";
import { mortarOf } from "./mortar.js";
import { sealantOf } from "./sealant.js";
import { setAreas, wallAreas } from "./set-areas.js";

/** What the walls of a plan take besides tile and trim; of a wall that isn't laid, nothing. */
export function materialsOf({ plan, walls }: SolvedPlan): Materials {
  const laid = walls.filter(({ lays }) => lays.length > 0);
  return {
    grout: laid.flatMap((wall) =>
      wall.lays.map((lay) => groutOf(wall, lay, setAreas(wall, lay), plan.grout)),
    ),
    sealant: laid.flatMap((wall) => sealantOf(wall, plan.walls, plan.sealant)),
    mortar: laid.map((wall) => mortarOf(plan, wall.wall.name, wallAreas(wall))),
    membrane: laid.map(membraneOf),
  };
}
