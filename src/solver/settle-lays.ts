import type { Plan, Wall, Wish } from "../model/index.js";
import { loneLays } from "./lone-lays.js";
import { placeOverEdges } from "./place-over-edges.js";
import type { RoomFound } from "./room/index.js";
import { Searches, type SearchTerms } from "./searches.js";
import { settleInRounds } from "./settle-rounds.js";
import type { RoomChoice, Unsettled } from "./solved.js";
import type { WallSettled } from "./wall-settled.js";

/** What a room's search comes to. */
export interface LaysSettled {
  /** By the walls as the plan has them. */
  readonly walls: ReadonlyMap<Wall, WallSettled>;
  readonly room: RoomChoice;
  readonly searches: readonly RoomFound[];
}

/**
 * Chooses for the lays of these walls together, each as a wall of the room that has it alone, and settles what they leave
 * free. A lay that begins past one of which the joint is left open waits until that one has its joint: it is
 * chosen in a later round, beside those that are laid by then.
 */
export function settleLays(
  plan: Plan,
  walls: readonly Wall[],
  wishes: readonly Wish[],
  { share, nearer }: SearchTerms,
): LaysSettled {
  const lone = walls.map((wall) => loneLays(plan, wall));
  const spans = lone
    .flatMap(({ unsettled }) => unsettled)
    .filter(({ opening, why }) => opening !== null && why === "spans");
  const searches = new Searches(nearer);
  if (spans.length === 0) return settleOnce(plan, walls, wishes, share, searches);
  const first = settleOnce(plan, walls, wishes, share / 2, searches);
  // What lies over the edge between lays is placed for the tiles of all of them, and their starts are chosen again for it.
  const placed = walls.map((wall) => {
    const names = spans.filter((each) => each.wall === wall.name).map(({ opening }) => opening!);
    return placeOverEdges(plan, { asked: wall, ...first.walls.get(wall)! }, names, wishes);
  });
  // For wishes in another order they may be placed otherwise.
  searches.part();
  const again = settleOnce(
    plan,
    placed.map(({ wall }) => wall),
    wishes,
    share / 2,
    searches,
  );
  const isPlaced = ({ wall, opening, why }: Unsettled) =>
    why === "spans" &&
    placed.some((each) => each.wall.name === wall && each.placed.includes(opening ?? ""));
  return {
    walls: new Map(walls.map((wall, i) => [wall, again.walls.get(placed[i]!.wall)!])),
    room: {
      weighed: first.room.weighed + again.room.weighed,
      capped: first.room.capped || again.room.capped || placed.some(({ capped }) => capped),
      unsettled: again.room.unsettled.filter((each) => !isPlaced(each)),
    },
    searches: searches.all,
  };
}

function settleOnce(
  plan: Plan,
  walls: readonly Wall[],
  wishes: readonly Wish[],
  share: number,
  searches: Searches,
): LaysSettled {
  const lone = walls.map((wall) => loneLays(plan, wall));
  const all = lone.flatMap(({ lays }) => lays);
  const { known, room } = settleInRounds(plan, all, wishes, share, searches);
  const settled = walls.map((wall) => [wall, known.settled(wall)] as const);
  const unsettled = lone.flatMap((each) => each.unsettled);
  return { walls: new Map(settled), room: { ...room, unsettled }, searches: searches.all };
}
