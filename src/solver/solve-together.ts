import type { Plan, Wall, Wish } from "../model/index.js";
import { bareWall, refusals } from "./refusals.js";
import { layWall } from "./lay-wall.js";
import { carryOn } from "./carry-start.js";
import { solveInOrder } from "./start-order.js";
import { isFree, layRoom } from "./room/index.js";
import { settleLays } from "./settle-lays.js";
import { solveWall } from "./solve-wall.js";
import type { RoomChoice, SolvedPlan } from "./solved.js";

/** Whether a wall has one lay, which has all of it: walls of several lays are laid lay by lay. */
function isLaidWhole({ lays }: Wall): boolean {
  return lays.length === 1 && lays[0]!.area === null;
}

/** Lays all walls of a plan together, for these wishes in this order. */
export function solveTogether(asked: Plan, wishes: readonly Wish[]): SolvedPlan {
  const refused = refusals(asked);
  const laid = asked.walls.filter((wall, i) => !refused[i] && isLaidWhole(wall));
  const { plan, chosen, room } = layRoom(asked, laid, wishes);
  const rooms: RoomChoice[] = [room];
  const walls = solveInOrder(plan.walls, (wall, i, solved) => {
    const start = chosen.get(wall.name);
    if (start) {
      return layWall(plan, wall, (plot) => carryOn(plot, start, solved));
    }
    if (refused[i]) return bareWall(plan, wall, refused[i]);
    if (wall.lays.length === 0 || !isFree(wall)) return solveWall(plan, wall, solved);
    const settled = settleLays(plan, wall, wishes, solved);
    rooms.push(settled.room);
    return settled.laid;
  });
  const standing = { ...plan, walls: walls.map(({ wall }) => wall) };
  return { plan: standing, room: { ...together(rooms), asked }, walls };
}

function together(rooms: readonly RoomChoice[]): RoomChoice {
  return {
    weighed: rooms.reduce((sum, { weighed }) => sum + weighed, 0),
    capped: rooms.some(({ capped }) => capped),
    unsettled: rooms.flatMap(({ unsettled }) => unsettled),
  };
}
