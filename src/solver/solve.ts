import type { Plan, Wall } from "../model/index.js";
import { carryOn, settleLay } from "./carry-start.js";
import { choose } from "./choose/choose.js";
import { layWall } from "./lay-wall.js";
import { bareWall, refusals } from "./refusals.js";
import { isRoom } from "./room/index.js";
import { solveTogether } from "./solve-together.js";
import type { SolvedPlan, SolvedWall } from "./solved.js";
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

function solveWall(plan: Plan, wall: Wall, solved: ReadonlyMap<string, SolvedWall>): SolvedWall {
  const { lay } = wall;
  if (!lay) return bareWall(plan, wall, null);
  const chosen = choose(plan, wall, settleLay(plan, wall, lay, solved));
  return layWall(plan, wall, lay, carryOn(plan, wall, lay, chosen, solved));
}
