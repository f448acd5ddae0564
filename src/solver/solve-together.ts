import type { Plan, Wall, Wish } from "../model/index.js";
import { bareWall, refusals } from "./refusals.js";
import { layWall } from "./lay-wall.js";
import { carryOn } from "./carry-start.js";
import { solveInOrder } from "./start-order.js";
import { layRoom } from "./room/index.js";
import { solveWall } from "./solve-wall.js";
import type { SolvedPlan } from "./solved.js";

/** Whether a wall has one lay, which has all of it: walls of several lays are laid by themselves. */
function isLaidWhole({ lays }: Wall): boolean {
  return lays.length === 1 && lays[0]!.area === null;
}

/** Lays all walls of a plan together, for these wishes in this order. */
export function solveTogether(asked: Plan, wishes: readonly Wish[]): SolvedPlan {
  const refused = refusals(asked);
  const laid = asked.walls.filter((wall, i) => !refused[i] && isLaidWhole(wall));
  const { plan, chosen, room } = layRoom(asked, laid, wishes);
  const walls = solveInOrder(plan.walls, (wall, i, solved) => {
    const start = chosen.get(wall.name);
    if (start) {
      return layWall(plan, wall, (plot) => carryOn(plot, start, solved));
    }
    return refused[i] ? bareWall(plan, wall, refused[i]) : solveWall(plan, wall, solved);
  });
  return { plan, room: { ...room, asked }, walls };
}
