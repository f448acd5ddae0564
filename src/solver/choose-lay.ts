import { carryOn, settleLay } from "./carry-start.js";
import { choose, type Chosen } from "./choose/index.js";
import { layRegion, type LayPlot } from "./lay-region.js";
import type { SolvedWall } from "./solved.js";

/** Chooses what a lay leaves open, where it has its place; of the walls that it may go on from `solved` already. */
export function chooseFor(plot: LayPlot, solved: ReadonlyMap<string, SolvedWall>): Chosen {
  const { plan, wall } = plot;
  const lay = settleLay(plot, solved);
  const chosen = choose(plan, wall, lay, (joint) => layRegion(plot, joint));
  return carryOn(plot, chosen, solved);
}
