import type { Nm } from "../../measure/index.js";
import { OpenPlaces } from "./open-places.js";

/** What may share a tile with another: how much of the tile it takes, and in which course it goes. */
export interface End {
  readonly size: Nm;
  readonly course: number;
}

export type Pair<T extends End> = readonly [T, T];

/**
 * As many pairs of a taker and a giver as there can be whose sizes together are at most `room`. The
 * largest taker goes first: whatever suits it suits every smaller one, so it may take any giver without
 * costing a pair. It takes one of its own course where it can, else the nearest.
 */
export function handOver<T extends End>(
  takers: readonly T[],
  givers: readonly T[],
  room: Nm,
): Pair<T>[] {
  const places = [...givers].sort((a, b) => a.course - b.course);
  const bySize = places.map((giver, place) => ({ giver, place }));
  bySize.sort((a, b) => a.giver.size - b.giver.size);
  const open = new OpenPlaces(places.length);
  const pairs: Pair<T>[] = [];
  const take = (taker: T, place: number) => {
    open.close(place);
    pairs.push([taker, places[place]!]);
  };
  let offered = 0;
  for (const equals of bySizeDown(takers)) {
    for (; offered < bySize.length; offered++) {
      const { giver, place } = bySize[offered]!;
      if (giver.size + equals[0]!.size > room) break;
      open.open(place);
    }
    const others = equals.filter((taker) => {
      const place = open.from(firstOfCourse(places, taker.course));
      if (place === null || places[place]!.course !== taker.course) return true;
      take(taker, place);
      return false;
    });
    for (const taker of others) {
      const place = nearest(taker, places, open);
      if (place !== null) take(taker, place);
    }
  }
  return pairs;
}

/**
 * As many pairs as there can be among ends that all may share a tile with each other. What takes more
 * than half the room can share with smaller ones alone, so those choose first; the smaller ones that
 * are left all suit each other.
 */
export function shareOut<T extends End>(ends: readonly T[], room: Nm): Pair<T>[] {
  const large = ends.filter(({ size }) => 2 * size > room);
  const small = ends.filter(({ size }) => 2 * size <= room);
  const pairs = handOver(large, small, room);
  const taken = new Set(pairs.map(([, giver]) => giver));
  const left = small.filter((end) => !taken.has(end)).sort((a, b) => a.course - b.course);
  return [...pairs, ...pairNeighbours(left)];
}

/** Pairs of one course first, then those that are left over, one course's with the next one's. */
function pairNeighbours<T extends End>(ends: readonly T[]): Pair<T>[] {
  const pairs: Pair<T>[] = [];
  const odd: T[] = [];
  for (let k = 0; k < ends.length; k++) {
    const [end, next] = [ends[k]!, ends[k + 1]];
    if (next?.course === end.course) {
      pairs.push([end, next]);
      k++;
    } else odd.push(end);
  }
  for (let k = 0; k + 1 < odd.length; k += 2) pairs.push([odd[k]!, odd[k + 1]!]);
  return pairs;
}

/** The ends by size, the largest first; those of one size together, course by course. */
function bySizeDown<T extends End>(ends: readonly T[]): T[][] {
  const sorted = [...ends].sort((a, b) => b.size - a.size || a.course - b.course);
  const groups: T[][] = [];
  for (const end of sorted) {
    const last = groups.at(-1);
    if (last?.[0]?.size === end.size) last.push(end);
    else groups.push([end]);
  }
  return groups;
}

function nearest<T extends End>(
  { course }: T,
  places: readonly T[],
  open: OpenPlaces,
): number | null {
  const at = firstOfCourse(places, course);
  const [before, from] = [open.before(at), open.from(at)];
  if (before === null || from === null) return before ?? from;
  const isBelowNearer = course - places[before]!.course <= places[from]!.course - course;
  return isBelowNearer ? before : from;
}

/** The first place of this course or a later one. */
function firstOfCourse(places: readonly End[], course: number): number {
  let low = 0;
  let high = places.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (places[middle]!.course < course) low = middle + 1;
    else high = middle;
  }
  return low;
}
