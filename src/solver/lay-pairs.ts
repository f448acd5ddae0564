import type { Wall } from "../model/index.js";
import { besideMost, endsAt, type LayStanding, meetingLays } from "./corner-lays.js";
import type { LoneLay } from "./lone-lays.js";
import { cornerPairs, type LayPair } from "./room/index.js";

/** A lay, and where it stands. */
export interface StandingLone extends LayStanding {
  readonly lone: LoneLay;
}

/**
 * Which lays meet at the corners of a room, by their numbers in a list: each of the wall that the corner is told of with the
 * other's that stands beside most of it, as they are measured. `isBonded` tells of which it is known, or searched, where their
 * tiles stand across.
 */
export function layPairs(
  all: readonly StandingLone[],
  isBonded: (lone: LoneLay) => boolean,
): LayPair[] {
  const walls = [...new Set(all.map(({ lone }) => lone.of))];
  const standing = (wall: Wall) => ({ wall, lays: all.filter(({ lone }) => lone.of === wall) });
  return cornerPairs(walls).flatMap(({ a, b, end }) => {
    const [told, other] = endsAt(standing(walls[a]!), standing(walls[b]!), end);
    return meetingLays(told, other).map(({ lay, other: beside }): LayPair => {
      const [i, j] = [all.indexOf(lay), all.indexOf(beside)];
      return {
        ...(i < j ? { a: i, b: j, end: told.side } : { a: j, b: i, end: other.side }),
        isBonded: [lay, beside].every(({ lone }) => isBonded(lone)),
        isSayable: besideMost(beside.region.bounds, told) === lay,
      };
    });
  });
}
