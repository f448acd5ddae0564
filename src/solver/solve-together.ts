import type { Plan, Wish } from "../model/index.js";
import { bareWall, refusals } from "./refusals.js";
import { layWall } from "./lay-wall.js";
import { carryOn } from "./carry-start.js";
import { solveInOrder } from "./start-order.js";
import { layRoom } from "./room/index.js";
import type { SolvedPlan } from "./solved.js";

/** Lays all walls of a plan together, for these wishes in this order. */
export function solveTogether(asked: Plan, wishes: readonly Wish[]): SolvedPlan {
  const refused = refusals(asked);
  const laid = asked.walls.filter((_, i) => !refused[i]);
  const { plan, chosen, room } = layRoom(asked, laid, wishes);
  const walls = solveInOrder(plan.walls, (wall, i, solved) => {
    const start = chosen.get(wall.name);
    if (!start) return bareWall(plan, wall, refused[i] ?? null);
    return layWall(plan, wall, wall.lay!, carryOn(plan, wall, wall.lay!, start, solved));
  });
  return { plan, room: { ...room, asked }, walls };
}
