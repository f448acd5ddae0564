import type { Nm } from "../measure/index.js";
import type { Plan, Wall, Wish } from "../model/index.js";
import { leftLay, standingLay } from "./asked-lay.js";
import { KnownLays } from "./known-lays.js";
import { layPairs } from "./lay-pairs.js";
import { isLeft, type LoneLay } from "./lone-lays.js";
import { type LayPair, layRoom } from "./room/index.js";
import type { Searches } from "./searches.js";
import type { Region, RoomChoice } from "./solved.js";

type Weighed = Pick<RoomChoice, "weighed" | "capped">;

/** What the rounds come to: what is known of all lays then, and how they were weighed. */
export interface RoundsSettled {
  readonly known: KnownLays;
  readonly room: Weighed;
}

/**
 * Searches lays in rounds, in each those that nothing they hang from is left open for, beside those that have their
 * place. `share` is what part of all looks each round may take; each is one of the searches.
 */
export function settleInRounds(
  plan: Plan,
  all: readonly LoneLay[],
  wishes: readonly Wish[],
  share: number,
  searches: Searches,
): RoundsSettled {
  const known = new KnownLays(plan, all);
  let room: Weighed = { weighed: 0, capped: false };
  let waiting = all.filter(isLeft);
  while (waiting.length > 0) {
    const ready = waiting.filter((lone) => known.isReady(lone));
    const { weighed, capped } = searchRound(known, ready, wishes, share, searches);
    room = { weighed: room.weighed + weighed, capped: room.capped || capped };
    waiting = waiting.filter((lone) => known.foundOf(lone) === null);
  }
  return { known, room };
}

/** Searches the lays that are ready, beside those that have their place. */
function searchRound(
  known: KnownLays,
  ready: readonly LoneLay[],
  wishes: readonly Wish[],
  share: number,
  searches: Searches,
): Weighed {
  const { lays, pairs } = laysOfRound(known, ready);
  const walls = lays.map((lone) =>
    ready.includes(lone) ? leftLay(known, lone) : standingLay(known, lone),
  );
  const laid = layRoom(known.plan, walls, wishes, {
    tiledAt: tiledBy(known, lays),
    pairs,
    share,
    nearer: searches.next,
  });
  searches.add(laid.found);
  lays.forEach((lone, i) => {
    if (ready.includes(lone)) known.settle(lone, laid.walls.get(walls[i]!)!);
  });
  return laid.room;
}

/** The lays of a round, and which of them meet at corners, by their numbers among these. */
function laysOfRound(
  known: KnownLays,
  ready: readonly LoneLay[],
): { lays: readonly LoneLay[]; pairs: readonly LayPair[] } {
  const { all, grounds } = known;
  const pairs = layPairs(
    all.map((lone) => known.standing(lone)),
    (lone) => ready.includes(lone) || known.isAcrossKnown(lone),
  );
  const isBeside = (i: number) =>
    pairs.some(({ a, b }) => (a === i || b === i) && ready.includes(all[a + b - i]!));
  const isIn = all.map(
    (lone, i) =>
      ready.includes(lone) ||
      (grounds.isPlaced(lone) &&
        (grounds.isJointOfOne(lone, ready) || (known.isStanding(lone) && isBeside(i)))),
  );
  const lays = all.filter((_, i) => isIn[i]);
  const numbers = new Map(lays.map((lone, i) => [all.indexOf(lone), i]));
  const meeting = pairs
    .filter(({ a, b }) => isIn[a] && isIn[b])
    .map((pair) => ({ ...pair, a: numbers.get(pair.a)!, b: numbers.get(pair.b)! }));
  return { lays, pairs: meeting };
}

/** What a lay has of its wall, asked by the wall that has it alone, as the search moves what is free there. */
function tiledBy(
  { grounds }: KnownLays,
  lays: readonly LoneLay[],
): (wall: Wall, joint: Nm) => Region {
  const byLay = new Map(lays.map((lone) => [keyOf(lone.of.name, lone.lay.name), lone]));
  return (wall, joint) =>
    grounds.regionAt(byLay.get(keyOf(wall.name, wall.lays[0]!.name))!, wall, joint);
}

function keyOf(wall: string, lay: string): string {
  return `${wall}/${lay}`;
}
