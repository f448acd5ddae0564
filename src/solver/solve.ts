import type { Plan } from "../model/index.js";
import { bareWall, refusals } from "./refusals.js";
import { isRoom } from "./room/index.js";
import { OWN_TERMS } from "./searches.js";
import { solveTogether } from "./solve-together.js";
import { solveWall } from "./solve-wall.js";
import { EarlierLayout } from "./earlier-layout.js";
import type { SolvedPlan } from "./solved.js";
import { solveInOrder } from "./start-order.js";

/**
 * Lays every wall of a plan. Never throws; a wall without a lay has its region and no pieces. `before` is the plan before a
 * change, or any other that may have walls alike: what comes to the same is laid once, and shared.
 */
export function solve(plan: Plan, before?: SolvedPlan): SolvedPlan {
  const earlier = before ? new EarlierLayout(before.walls) : EarlierLayout.NONE;
  if (isRoom(plan)) return solveTogether(plan, plan.wishes, OWN_TERMS, earlier);
  const refused = refusals(plan);
  const walls = solveInOrder(plan.walls, (wall, i, solved) =>
    refused[i] ? bareWall(plan, wall, refused[i]) : solveWall(plan, wall, solved, earlier),
  );
  return { plan, walls };
}
