import type { Plan, Wall, Wish } from "../model/index.js";
import { carryOn } from "./carry-start.js";
import { chooseFor } from "./choose-lay.js";
import { EarlierLayout } from "./earlier-layout.js";
import { layWall, type Starting } from "./lay-wall.js";
import { isLaidWhole } from "./lone-lays.js";
import { bareWall, refusals } from "./refusals.js";
import { isFree, isSharingJoint } from "./room/index.js";
import { OWN_TERMS, type SearchTerms } from "./searches.js";
import { settleLays } from "./settle-lays.js";
import type { SolvedPlan } from "./solved.js";
import { asSettled } from "./start.js";
import { solveInOrder } from "./start-order.js";

/**
 * Lays all walls of a plan together, for these wishes in this order; `terms` by default are those of a plan's own layout.
 * What it shares with `earlier` is that.
 */
export function solveTogether(
  asked: Plan,
  wishes: readonly Wish[],
  terms: SearchTerms = OWN_TERMS,
  earlier = EarlierLayout.NONE,
): SolvedPlan {
  const refused = refusals(asked);
  // Without wishes, free places and shared joints the lays of a wall are chosen one by one, as everywhere.
  const isTogether = (wall: Wall) =>
    wishes.length > 0 || isLaidWhole(wall) || isFree(wall) || isSharingJoint(wall);
  const laid = asked.walls.filter((wall, i) => !refused[i] && wall.lays.length > 0);
  const {
    walls: settled,
    room,
    searches,
  } = settleLays(asked, laid.filter(isTogether), wishes, terms);
  const plan = { ...asked, walls: asked.walls.map((wall) => settled.get(wall)?.wall ?? wall) };
  const walls = solveInOrder(plan.walls, (wall, i, solved) => {
    if (refused[i] || wall.lays.length === 0) return bareWall(plan, wall, refused[i] ?? null);
    const starts = settled.get(asked.walls[i]!)?.starts;
    const starting: Starting = (plot) => {
      const start = starts?.get(plot.lay.name);
      if (!start) return chooseFor(plot, solved);
      // What goes on from another lay starts as that does, at the joint and the height that were chosen.
      const follows = plot.lay.goesOnFrom !== null ? asSettled(plot.lay).across : null;
      return carryOn(plot, follows ? { ...start, across: follows } : start, solved);
    };
    return layWall(plan, wall, starting, earlier);
  });
  return { plan, room: { ...room, asked, searches }, walls };
}
