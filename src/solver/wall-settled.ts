import type { Wall } from "../model/index.js";
import type { Chosen } from "./choose/index.js";
import type { LoneLay } from "./lone-lays.js";
import {
  isFree,
  movedOpenings,
  settle,
  settledAcross,
  settledUp,
  type WallChosen,
} from "./room/index.js";

/** A wall with what it leaves free settled, and how its lays start, by their names. */
export interface WallSettled {
  readonly wall: Wall;
  readonly starts: ReadonlyMap<string, Chosen>;
}

/** A wall where all of it is settled by what was found for its lays: starts speak of openings where they stand now. */
export function settleWall(of: Wall, found: ReadonlyMap<LoneLay, WallChosen>): WallSettled {
  const lays = [...found].filter(([lone]) => lone.of === of);
  let { up: stop } = of.size;
  const places = of.openings.map(({ at }) => at);
  for (const [{ own }, { wall }] of lays) {
    if (own.stop) stop = wall.size.up;
    for (const i of own.openings) places[i] = wall.openings[i]!.at;
  }
  const standing = isFree(of) ? settle(of, { stop, places }) : of;
  const starts = lays.map(
    ([{ lay }, { wall, chosen }]) => [lay.name, follow(chosen, wall, standing)] as const,
  );
  return { wall: standing, starts: new Map(starts) };
}

function follow(chosen: Chosen, from: Wall, to: Wall): Chosen {
  const openings = movedOpenings(from, to);
  return {
    ...chosen,
    across: settledAcross(chosen.across, openings),
    up: settledUp(chosen.up, openings),
  };
}
