import type { Lay, Plan, Wall, Wish } from "../../model/index.js";
import type { Chosen } from "../choose/index.js";
import { sayAcross, sayUp } from "../choose/named-starts.js";
import { startOf, weighQuickly } from "../choose/weigh.js";
import type { Choice, Option, RoomChoice } from "../solved.js";
import { type RoomFound, type RoomGround, searchRoom } from "./search-room.js";
import { isSharingJoint } from "./clusters.js";
import { isFree, movedOpenings, settle, settledAcross, settledUp } from "./settle.js";
import type { WallFound } from "./wall-at.js";

/** A wall with all that it left free settled, and how its lay starts. */
export interface WallChosen {
  readonly wall: Wall;
  readonly chosen: Chosen;
}

/** How walls are laid together. */
export interface RoomLaid {
  /** By the walls as they were asked for. */
  readonly walls: ReadonlyMap<Wall, WallChosen>;
  readonly room: Pick<RoomChoice, "weighed" | "capped">;
  readonly found: RoomFound;
}

/** Whether a plan asks for its walls to be laid together. */
export function isRoom({ wishes, walls }: Plan): boolean {
  return (
    wishes.length > 0 ||
    walls.some((wall) => wall.lays.length > 0 && (isFree(wall) || isSharingJoint(wall)))
  );
}

/**
 * Lays walls of a plan that have one lay each together, for these wishes in this order. `ground` says what of its wall each lay
 * has, and which of them meet; by default each has all of its wall.
 */
export function layRoom(
  plan: Plan,
  walls: readonly Wall[],
  wishes: readonly Wish[],
  ground?: RoomGround,
): RoomLaid {
  const found = searchRoom(plan, walls, wishes, ground);
  const laid = new Map<Wall, WallChosen>();
  for (const [i, each] of found.walls) {
    const asked = walls[i]!;
    const wall = isFree(asked) ? settle(asked, each.settled) : asked;
    laid.set(asked, { wall, chosen: chosenOf(asked.lays[0]!, wall, each, found) });
  }
  return { walls: laid, room: { weighed: found.weighed, capped: found.capped }, found };
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
