import type { Plan, Wall } from "../model/index.js";
import { choose } from "./choose/choose.js";
import { layWall } from "./lay-wall.js";
import { bareWall, refusals } from "./refusals.js";
import { isRoom } from "./room/index.js";
import { solveTogether } from "./solve-together.js";
import type { SolvedPlan, SolvedWall } from "./solved.js";

/** Lays every wall of a plan. Never throws; a wall without a lay has its region and no pieces. */
export function solve(plan: Plan): SolvedPlan {
  if (isRoom(plan)) return solveTogether(plan, plan.wishes);
  const refused = refusals(plan);
  const walls = plan.walls.map((wall, i) =>
    refused[i] ? bareWall(plan, wall, refused[i]) : solveWall(plan, wall),
  );
  return { plan, walls };
}

function solveWall(plan: Plan, wall: Wall): SolvedWall {
  const { lay } = wall;
  if (!lay) return bareWall(plan, wall, null);
  return layWall(plan, wall, lay, choose(plan, wall, lay));
}
