import type { Wish } from "../model/index.js";
import { MEASURES } from "./choose/index.js";
import { moduleAcross } from "./lattice.js";
import { type Measured, measureRoom, type RoomFound } from "./room/index.js";
import type { NearerThan } from "./searches.js";
import { solveTogether } from "./solve-together.js";
import type { Score, SolvedPlan, SolvedWall } from "./solved.js";

/** A wish in a solved room. */
export interface WishOutcome {
  readonly wish: Wish;
  /** What is missed: nm, or a number of cuts. */
  readonly missed: number;
  /** The layout in which it is met as nearly as it can be; null where it is met so already. */
  readonly nearest: RoomLayout | null;
}

/** A room laid in one way. */
export interface RoomLayout extends Measured {
  readonly solved: SolvedPlan;
}

/** Why a layout of a room is offered. */
export type Reason =
  | { readonly kind: "ranked" }
  /** It is the best with this wish before all others. */
  | { readonly kind: "first"; readonly wish: Wish }
  /** It is the best without this wish. */
  | { readonly kind: "without"; readonly wish: Wish };

export interface RoomOption extends RoomLayout {
  readonly reason: Reason;
  /** Whether it is what the plan has. */
  readonly had: boolean;
}

/** A check and its report both ask what wishes cost. */
const outcomes = new WeakMap<SolvedPlan, readonly WishOutcome[]>();

/** Each wish of a plan, and what it would take to meet those that aren't met. None where the plan has no wishes. */
export function wishOutcomes(solved: SolvedPlan): readonly WishOutcome[] {
  const known = outcomes.get(solved);
  if (known) return known;
  const found = findOutcomes(solved);
  outcomes.set(solved, found);
  return found;
}

function findOutcomes(solved: SolvedPlan): WishOutcome[] {
  if (!solved.room) return [];
  const { asked, searches } = solved.room;
  const own = layoutOf(solved, asked.wishes);
  // A check asks for all of them: together they may take a third as long as the plan's own layout.
  const share = 1 / (3 * own.misses.filter((missed) => missed > 0).length);
  return asked.wishes.map((wish, i) => {
    const missed = own.misses[i]!;
    if (missed === 0) return { wish, missed, nearest: null };
    const first = [wish, ...asked.wishes.filter((other) => other !== wish)];
    const nearest = layoutOf(
      solveTogether(asked, first, { share, nearer: nearerThan(searches, i + 1, missed) }),
      asked.wishes,
    );
    return { wish, missed, nearest: nearest.misses[i]! < missed ? nearest : null };
  });
}

/**
 * What a search for a wish at a place may begin with: searches whose costs tell all that is missed of it. Lays that wait for others
 * are told more than once; what goes on from another isn't weighed, so that then nothing is known.
 */
function nearerThan(
  searches: readonly RoomFound[],
  place: number,
  missed: number,
): NearerThan | null {
  const clusters = searches.flatMap((found) => found.clusters);
  const weighed = clusters.reduce((sum, laid) => sum + (laid?.cost[place] ?? 0), 0);
  return weighed >= missed ? { searches, place } : null;
}

/** More ways to lay a room than this are not told. */
const MOST_TOLD = 6;

/**
 * The best few layouts of a room that really differ, best first: as its wishes are ranked, with each
 * wish that isn't met before all others, and without each that is.
 */
export function roomOptions(solved: SolvedPlan): readonly RoomOption[] {
  if (!solved.room) return [];
  const { asked } = solved.room;
  const own: RoomOption = {
    ...layoutOf(solved, asked.wishes),
    reason: { kind: "ranked" },
    had: true,
  };
  const others = wishOutcomes(solved).flatMap(({ wish, missed, nearest }): RoomOption[] => {
    if (nearest) return [{ ...nearest, reason: { kind: "first", wish }, had: false }];
    if (missed > 0) return [];
    const rest = asked.wishes.filter((other) => other !== wish);
    const without = layoutOf(solveTogether(asked, rest), asked.wishes);
    return [{ ...without, reason: { kind: "without", wish }, had: false }];
  });
  const kept: RoomOption[] = [own];
  for (const option of others.sort(compareLayouts)) {
    if (kept.length >= MOST_TOLD) break;
    if (!kept.some((other) => isSame(other.solved, option.solved))) kept.push(option);
  }
  return kept;
}

/** The measures in which a layout costs more than another, in their order. */
export function worseIn(
  layout: Measured,
  than: Measured,
): {
  readonly wishes: readonly number[];
  readonly measures: readonly (keyof Score)[];
} {
  const wishes = layout.misses.flatMap((missed, i) => (missed > than.misses[i]! ? [i] : []));
  const measures = MEASURES.filter((measure) => layout.score[measure] > than.score[measure]);
  return { wishes, measures };
}

function layoutOf(solved: SolvedPlan, wishes: readonly Wish[]): RoomLayout {
  return { solved, ...measureRoom(solved.plan, solved.walls, wishes) };
}

function compareLayouts(a: Measured, b: Measured): number {
  const numbers = ({ misses, score }: Measured) => [
    ...misses,
    ...MEASURES.map((measure) => score[measure]),
  ];
  const [ours, theirs] = [numbers(a), numbers(b)];
  const i = ours.findIndex((number, k) => number !== theirs[k]);
  return i < 0 ? 0 : ours[i]! - theirs[i]!;
}

/** Whether two layouts of a room come to the same pieces. */
function isSame(a: SolvedPlan, b: SolvedPlan): boolean {
  return a.walls.every((wall, i) => isSameWall(wall, b.walls[i]!));
}

function isSameWall(a: SolvedWall, b: SolvedWall): boolean {
  const place = ({ wall }: SolvedWall) =>
    JSON.stringify([wall.size.up, wall.openings.map(({ at }) => at)]);
  return (
    place(a) === place(b) &&
    a.lays.every((lay, i) => {
      const other = b.lays[i]!;
      return (
        lay.joint === other.joint &&
        lay.lattice.y === other.lattice.y &&
        (lay.lattice.x - other.lattice.x) % moduleAcross(lay.lattice) === 0
      );
    })
  );
}
