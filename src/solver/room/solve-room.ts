import type { Lay, Plan, Wall, Wish } from "../../model/index.js";
import type { Chosen } from "../choose/index.js";
import { sayAcross, sayUp } from "../choose/named-starts.js";
import { startOf, weighQuickly } from "../choose/weigh.js";
import type { Choice, Option, RoomChoice } from "../solved.js";
import { type RoomFound, searchRoom } from "./search-room.js";
import { isFree, movedOpenings, settle, settledAcross, settledUp } from "./settle.js";
import type { WallFound } from "./wall-at.js";
import type { TiledAt } from "./wanting.js";

/** A plan with all that it left free settled, and how its walls are laid. */
export interface RoomLaid {
  readonly plan: Plan;
  /** By the names of the walls that the room's search chose for. */
  readonly chosen: ReadonlyMap<string, Chosen>;
  readonly room: RoomChoice;
}

/** Whether a plan asks for its walls to be laid together. */
export function isRoom({ wishes, walls }: Plan): boolean {
  return wishes.length > 0 || walls.some((wall) => wall.lays.length > 0 && isFree(wall));
}

/**
 * Lays the walls of a plan together, for these wishes in this order. `walls` are those that may be laid;
 * the others stay as they are. `tiledAt` says what of a wall its first lay has; by default it has all of it.
 */
export function layRoom(
  plan: Plan,
  walls: readonly Wall[],
  wishes: readonly Wish[],
  tiledAt?: TiledAt,
): RoomLaid {
  const found = searchRoom(plan, walls, wishes, tiledAt);
  const settled = new Map<Wall, Wall>();
  const chosen = new Map<string, Chosen>();
  for (const [i, each] of found.walls) {
    const wall = walls[i]!;
    const standing = isFree(wall) ? settle(wall, each.settled) : wall;
    settled.set(wall, standing);
    chosen.set(wall.name, chosenOf(wall.lays[0]!, standing, each, found));
  }
  return {
    plan: { ...plan, walls: plan.walls.map((wall) => settled.get(wall) ?? wall) },
    chosen,
    room: { weighed: found.weighed, capped: found.capped, unsettled: [] },
  };
}

function chosenOf(
  { across, up, joint }: Lay,
  standing: Wall,
  found: WallFound,
  room: RoomFound,
): Chosen {
  const { field, x, y } = found;
  const lay = field.ground.lay;
  const start = startOf(field, x, y);
  // The wall that was weighed has openings of its own.
  const moved = movedOpenings(field.ground.wall, standing);
  const said = sayAcross(field, x).start;
  const isNamed = !("centre" in said) || said.centre.on !== "place";
  const open = isNamed ? said : (found.carried ?? said);
  const chosen: Option = {
    across: settledAcross(lay.across ?? open, moved),
    up: settledUp(lay.up ?? sayUp(field, y).start, moved),
    joint: field.ground.joint,
    score: weighQuickly(field, start, { cells: 0 }, null)!,
  };
  const left: Choice["left"] = [
    ...(across ? [] : (["across"] as const)),
    ...(up ? [] : (["up"] as const)),
    ...(joint.min < joint.max ? (["joint"] as const) : []),
  ];
  const { weighed, capped } = room;
  const choice: Choice = {
    by: "room",
    left,
    chosen,
    others: [],
    weighed,
    decidedBy: null,
    capped,
  };
  return {
    joint: chosen.joint,
    across: chosen.across,
    up: chosen.up,
    choice: left.length > 0 ? choice : null,
  };
}
