import type { Plan } from "../model/index.js";
import { bareWall, refusals } from "./refusals.js";
import { isRoom } from "./room/index.js";
import { solveTogether } from "./solve-together.js";
import { solveWall } from "./solve-wall.js";
import type { SolvedPlan } from "./solved.js";
import { solveInOrder } from "./start-order.js";

/** Lays every wall of a plan. Never throws; a wall without a lay has its region and no pieces. */
export function solve(plan: Plan): SolvedPlan {
  if (isRoom(plan)) return solveTogether(plan, plan.wishes);
  const refused = refusals(plan);
  const walls = solveInOrder(plan.walls, (wall, i, solved) =>
    refused[i] ? bareWall(plan, wall, refused[i]) : solveWall(plan, wall, solved),
  );
  return { plan, walls };
}
