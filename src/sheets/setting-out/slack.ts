import type { Nm } from "../../measure/index.js";

/** What goes wrong when a measure on the site is off by too much. */
export type Trouble =
  "under-half" | "sliver" | "gone" | "joint-closes" | "joint-opens" | "end-shows";

/** How far something may move, and what happens then. */
export interface Room {
  readonly by: Nm;
  readonly then: Trouble;
}

/** How far a border may move towards the tile that it cuts (`shrink`), and away from it (`grow`). */
export interface Slack {
  /** null where the piece is under its limit already, or nothing is there to shrink. */
  readonly shrink: Room | null;
  /** null where a tile is whole there already: all that is more shows in the joint. */
  readonly grow: Room | null;
}

/** What a border leaves of a tile. */
export interface Rest {
  readonly size: Nm;
  /** Less than the size where another wall's tile covers some of it. */
  readonly seen: Nm;
}

/** What a rest is held against: the face and the limits of its direction, and the border's joint. */
export interface Measures {
  readonly face: Nm;
  /** 0 where nothing is held to half. */
  readonly half: Nm;
  /** 0 where the rule is off. */
  readonly sliver: Nm;
  /** null where the tiles along the border are cut one by one, so that a whole one may be cut too. */
  readonly joint: Nm | null;
}

export function slackOf({ size, seen }: Rest, { face, half, sliver, joint }: Measures): Slack {
  const grow: Room | null = size < face ? { by: face - size, then: "joint-opens" } : null;
  if (size === face && seen === face && joint !== null) {
    return { shrink: joint > 0 ? { by: joint, then: "joint-closes" } : null, grow };
  }
  if (half > 0 && seen >= half) return { shrink: { by: seen - half, then: "under-half" }, grow };
  if (sliver === 0) return { shrink: { by: seen, then: "gone" }, grow };
  return { shrink: seen >= sliver ? { by: seen - sliver, then: "sliver" } : null, grow };
}

/** What holds for several tiles at one border: the least room in each direction. */
export function leastSlack(all: readonly Slack[]): Slack {
  return { shrink: leastRoom(all.map((s) => s.shrink)), grow: leastRoom(all.map((s) => s.grow)) };
}

function leastRoom(rooms: readonly (Room | null)[]): Room | null {
  let least: Room | null = null;
  for (const room of rooms) {
    if (room === null) return null;
    if (least === null || room.by < least.by) least = room;
  }
  return least;
}
