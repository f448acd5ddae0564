import type { Plan, Wall } from "../model/index.js";
import { chooseFor } from "./choose-lay.js";
import { layWall } from "./lay-wall.js";
import { bareWall } from "./refusals.js";
import type { EarlierLayout } from "./earlier-layout.js";
import type { SolvedWall } from "./solved.js";

/** Lays one wall, of those that it goes on from `solved` already; what its lays leave open is chosen lay by lay, in the order of their places. */
export function solveWall(
  plan: Plan,
  wall: Wall,
  solved: ReadonlyMap<string, SolvedWall>,
  earlier?: EarlierLayout,
): SolvedWall {
  if (wall.lays.length === 0) return bareWall(plan, wall, null);
  return layWall(plan, wall, (plot) => chooseFor(plot, solved), earlier);
}
