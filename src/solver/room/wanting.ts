import type { Nm } from "../../measure/index.js";
import type { Limits, Plan, Wall, Wish } from "../../model/index.js";
import type { Bound } from "../choose/bounds.js";
import { regionOf } from "../region.js";
import type { Region, Score } from "../solved.js";
import type { Cost } from "./cost.js";

/** The measures of a score, behind the wishes. */
const MEASURED = 6;

/** A wish and its place in a cost. */
export interface RankedWish {
  readonly wish: Wish;
  readonly place: number;
}

/** What of a wall, as it is settled so far, is tiled by the lay that is looked at. */
export type TiledAt = (wall: Wall, joint: Nm) => Region;

/** What is wanted of a room, in ranks, and what of its walls is tiled. */
export interface Wanting {
  readonly plan: Plan;
  readonly wishes: readonly RankedWish[];
  readonly tiledAt: TiledAt;
}

/** The wishes in this order, the most wanted first; by default a lay has all of its wall. */
export function wantingOf(
  plan: Plan,
  wishes: readonly Wish[],
  tiledAt: TiledAt = (wall, joint) => regionOf(plan, wall, joint),
): Wanting {
  return { plan, wishes: wishes.map((wish, i) => ({ wish, place: i + 1 })), tiledAt };
}

/** A wall's cost from what its wishes miss, by their places, and its score. */
export function costOf(
  { wishes }: Wanting,
  missed: ReadonlyMap<number, number>,
  score: Score,
): Cost {
  const { slivers, underHalf, imbalance, cuts, tiles, jointOver } = score;
  return [
    tiles === 0 ? 1 : 0,
    ...wishes.map(({ place }) => missed.get(place) ?? 0),
    slivers,
    underHalf,
    imbalance,
    cuts,
    tiles,
    jointOver,
  ];
}

/** The score behind the wishes. */
export function scoreIn(cost: Cost): Score {
  const [slivers, underHalf, imbalance, cuts, tiles, jointOver] = cost.slice(-MEASURED);
  return {
    slivers: slivers!,
    underHalf: underHalf!,
    imbalance: imbalance!,
    cuts: cuts!,
    tiles: tiles!,
    jointOver: jointOver!,
  };
}

/** What something costs at least: nothing is known of its cuts and tiles. */
export function leastCost(
  { wishes }: Wanting,
  missed: ReadonlyMap<number, number>,
  { slivers, underHalf, imbalance }: Bound,
  jointOver: Nm,
): Cost {
  const misses = wishes.map(({ place }) => missed.get(place) ?? 0);
  return [0, ...misses, slivers, underHalf, imbalance, 0, 0, jointOver];
}

/** Whether something costs at least as much as `most`; without making its cost. */
export function isNoLess(
  { wishes }: Wanting,
  missed: ReadonlyMap<number, number>,
  { slivers, underHalf, imbalance }: Bound,
  jointOver: Nm,
  most: Cost,
): boolean {
  for (const { place } of wishes) {
    const apart = (missed.get(place) ?? 0) - most[place]!;
    if (apart !== 0) return apart > 0 && most[0] === 0;
  }
  const first = 1 + wishes.length;
  const apart =
    -most[0]! ||
    slivers - most[first]! ||
    underHalf - most[first + 1]! ||
    imbalance - most[first + 2]! ||
    -most[first + 3]! ||
    -most[first + 4]! ||
    jointOver - most[first + 5]!;
  return apart >= 0;
}

/** Whether what is added has more in it than the score in a cost; without making its cost. */
export function hasMore(
  { slivers, underHalf, cuts, tiles }: Pick<Score, "slivers" | "underHalf" | "cuts" | "tiles">,
  most: Cost,
): boolean {
  const first = most.length - MEASURED;
  const apart =
    slivers - most[first]! ||
    underHalf - most[first + 1]! ||
    -most[first + 2]! ||
    cuts - most[first + 3]! ||
    tiles - most[first + 4]! ||
    -most[first + 5]!;
  return apart > 0;
}

/** More walls than any plan has: what can't be laid at all counts as so many that lay nothing. */
const WORST = 1_000_000;

/** More than any layout costs. */
export function worstCost(wanting: Wanting): Cost {
  return noCost(wanting).map((none, i) => (i === 0 ? WORST : none));
}

export function noCost({ wishes }: Wanting): Cost {
  return new Array<number>(1 + wishes.length + MEASURED).fill(0);
}

/** A wish's misses alone. */
export function costAt(wanting: Wanting, place: number, missed: number): Cost {
  return noCost(wanting).map((none, i) => (i === place ? missed : none));
}

/** The wishes of one kind that hold for a wall. */
export function wishesOf(
  { wishes }: Wanting,
  wall: string,
  kinds: readonly Wish["wanted"]["kind"][],
): RankedWish[] {
  return wishes.filter(({ wish: { wanted, wall: own } }) => {
    if (!kinds.includes(wanted.kind)) return false;
    if (wanted.kind === "centre") return wanted.on.wall === wall;
    if (wanted.kind === "whole-at-opening") return wanted.of.wall === wall;
    return own === null || own === wall;
  });
}

/** Limits by which the slivers are the cuts under a size, and nothing else is counted. */
export function limitsUnder(limits: Limits, under: number): Limits {
  return { ...limits, sliver: { kind: "length", nm: under }, half: { kind: "off" } };
}
