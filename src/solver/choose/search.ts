import type { Nm } from "../../measure/index.js";
import type { Lay, Plan, Wall } from "../../model/index.js";
import type { Score } from "../solved.js";
import { acrossOrigin, upOrigin } from "../start.js";
import {
  type AcrossBound,
  type Bound,
  boundAcross,
  boundPair,
  boundUp,
  MOST_BOXES,
} from "./bounds.js";
import { compareScores } from "./compare.js";
import { criticalJoints } from "./critical-joints.js";
import { type Field, fieldOf } from "./field.js";
import { narrowDown } from "./narrow-down.js";
import { namedAcross, namedUp, sayAcross, sayUp } from "./named-starts.js";
import { criticalAcross, criticalUp } from "./origins.js";
import { type Run, runsOf } from "./runs.js";
import { hasSlopes } from "./sloped-origins.js";
import { scribedSlivers } from "./scribed.js";
import { type Columns, columnsOf, type Effort, lowestCourse, weigh } from "./weigh.js";

/** A lattice that was weighed. */
export interface Found {
  readonly field: Field;
  readonly x: Nm;
  readonly y: Nm;
  readonly score: Score;
  /** How simply its starts are said; the lower, the simpler. */
  readonly rank: number;
}

/** What a search came to. */
export interface Search {
  readonly best: Found;
  /** How many pairs of starts, at every joint, were weighed or shown to be no better. */
  readonly weighed: number;
  /** Whether it was stopped; the best so far stands then. */
  readonly capped: boolean;
}

/** How much one lay is weighed with at most: the same on every machine. */
export const MOST = {
  joints: 1_500,
  /** Critical starts of one direction at one joint. */
  starts: 2_000,
  /** Looks at an obstacle when starts are bounded, over all joints. */
  looks: 2_500_000,
  /** Pairs of starts. */
  pairs: 400_000,
  /** Looks at a group of like tiles. */
  cells: 500_000,
} as const;

/** One start across or up, what it costs at least, and its tiles once they are asked for. */
interface Half<Cost extends Bound, Tiles> {
  readonly at: Nm;
  readonly bound: Cost;
  tiles: Tiles | null;
}

type Across = Half<AcrossBound, Columns>;
interface Up extends Half<Bound, readonly Run[]> {
  /** The slivers along a sloping bottom and top, once they are asked for. */
  scribed: number | null;
}

interface AtJoint {
  readonly field: Field;
  /** Whether there are more critical starts than are weighed. */
  readonly isThinned: boolean;
  /** Best bound first. */
  readonly across: readonly Across[];
  readonly up: readonly Up[];
}

/** Finds the best of all starts and joints that a lay leaves open. */
export function search(plan: Plan, wall: Wall, lay: Lay): Search {
  const fieldAt = (joint: Nm) => fieldOf(plan, wall, lay, joint);
  const [least, most] = [fieldAt(lay.joint.min), fieldAt(lay.joint.max)];
  const { joints, isAll } = criticalJoints(least, most);
  const first = atJoint(least);
  const kept = thinned(joints, Math.min(MOST.joints, Math.floor(MOST.looks / looksAt(first)) + 2));
  const searching = new Searching();
  for (const field of least.ground.joint === most.ground.joint ? [least] : [least, most]) {
    searching.weighNamed(field);
  }
  // What a joint's starts come to is not kept while others are looked at: there may be thousands.
  const bounds = kept.map((joint) => ({ joint, bound: lowest(atJoint(fieldAt(joint))) }));
  bounds.sort((a, b) => compareBounds(a.bound, b.bound) || a.joint - b.joint);
  for (const { joint, bound } of bounds) {
    if (searching.isBeaten(bound) || searching.isOver) break;
    searching.searchJoint(atJoint(fieldAt(joint)));
  }
  for (const joint of new Set([least.ground.joint, most.ground.joint, searching.joint])) {
    const field = fieldAt(joint);
    if (hasSlopes(field) || field.circles.length > 0) searching.searchBetween(field);
  }
  return searching.found(!isAll || kept.length < joints.length || first.isThinned);
}

/** About how many looks at obstacles it takes to bound all starts at a joint. */
function looksAt({ field, across, up }: AtJoint): number {
  const obstacles = field.obstacles.length;
  const each = 4 + Math.min(obstacles, MOST_BOXES) * obstacles;
  return (across.length * field.shifts.length + up.length) * each;
}

/** At most so many of the places, evenly taken out of all. */
function thinned(joints: readonly Nm[], most: number): readonly Nm[] {
  if (joints.length <= most) return joints;
  return Array.from({ length: most }, (_, i) => {
    return joints[Math.round((i * (joints.length - 1)) / (most - 1))]!;
  });
}

function atJoint(field: Field): AtJoint {
  const { lay } = field.ground;
  const { ground } = field;
  const allAcross = lay.across ? [] : criticalAcross(field);
  const allUp = lay.up ? [] : criticalUp(field);
  const namedX = lay.across ? [lay.across] : namedAcross(ground.wall).slice(0, MOST_NAMED);
  const namedY = lay.up ? [lay.up] : namedUp(ground.wall).slice(0, MOST_NAMED);
  const across = thinned(allAcross, MOST.starts).concat(namedX.map((s) => acrossOrigin(ground, s)));
  const up = thinned(allUp, MOST.starts).concat(namedY.map((s) => upOrigin(ground, s)));
  const isThinned = Math.max(allAcross.length, allUp.length) > MOST.starts;
  return {
    field,
    isThinned,
    across: across.map((x) => acrossHalf(field, x)).sort(byBound),
    up: up.map((y) => upHalf(field, y)).sort(byBound),
  };
}

function acrossHalf(field: Field, x: Nm): Across {
  return { at: x, bound: boundAcross(field, x), tiles: null };
}

function upHalf(field: Field, y: Nm): Up {
  const at = lowestCourse(field, y);
  return { at, bound: boundUp(field, at), tiles: null, scribed: null };
}

function byBound(a: Half<Bound, unknown>, b: Half<Bound, unknown>): number {
  return compareBounds(a.bound, b.bound) || a.at - b.at;
}

function compareBounds(a: Bound, b: Bound): number {
  return a.slivers - b.slivers || a.underHalf - b.underHalf || a.imbalance - b.imbalance;
}

/**
 * What any pair of starts at a joint costs at least. The bounds know nothing of slopes, so the best
 * of the critical starts bounds those that only a slope makes critical, too.
 */
function lowest({ across, up }: AtJoint): Bound {
  return sum(across[0]!.bound, up[0]!.bound);
}

function sum(a: Bound, b: Bound): Bound {
  return {
    slivers: a.slivers + b.slivers,
    underHalf: a.underHalf + b.underHalf,
    imbalance: a.imbalance + b.imbalance,
  };
}

/** Weighs pairs of starts and keeps the best; pairs whose bound is worse are passed over. */
class Searching {
  private best: Found | null = null;
  private weighed = 0;
  private pairs = 0;
  private readonly effort: Effort = { cells: 0 };
  private readonly narrowing: Effort = { cells: 0 };
  /** Whether the most that a lay is weighed with is used up. */
  isOver = false;

  weighNamed(field: Field): void {
    const { wall, lay } = field.ground;
    const across = lay.across ? [lay.across] : namedAcross(wall).slice(0, MOST_NAMED);
    const up = lay.up ? [lay.up] : namedUp(wall).slice(0, MOST_NAMED);
    const ups = up.map((start) => upHalf(field, upOrigin(field.ground, start)));
    for (const start of across) {
      const half = acrossHalf(field, acrossOrigin(field.ground, start));
      for (const other of ups) {
        if (this.best && this.isSpent()) return;
        this.weighPair(field, half, other);
      }
    }
  }

  /** Weighs the pairs of critical starts at a joint that may be the best. */
  searchJoint({ field, across, up }: AtJoint): void {
    this.weighed += across.length * up.length;
    const leastUp = up[0]!.bound;
    for (const half of across) {
      if (this.isBeaten(half.bound, leastUp) || this.isSpent()) break;
      for (const other of up) {
        if (this.isBeaten(half.bound, other.bound) || this.isSpent()) break;
        this.weighPair(field, half, other);
      }
    }
  }

  /** Where slopes and round holes make more starts critical, weighs all starts at one joint. */
  searchBetween(field: Field): void {
    const { best, boxes, isStopped } = narrowDown(field, this.best!.score, this.narrowing);
    this.weighed += boxes;
    if (isStopped) this.isOver = true;
    if (best) this.best = { ...best, rank: rankOf(best) };
  }

  get joint(): Nm {
    return this.best!.field.ground.joint;
  }

  found(isThinned: boolean): Search {
    return { best: this.best!, weighed: this.weighed, capped: this.isOver || isThinned };
  }

  isBeaten(a: Bound, b: Bound = NOTHING): boolean {
    if (!this.best) return false;
    const { score } = this.best;
    const slivers = a.slivers + b.slivers;
    if (slivers !== score.slivers) return slivers > score.slivers;
    const underHalf = a.underHalf + b.underHalf;
    if (underHalf !== score.underHalf) return underHalf > score.underHalf;
    return a.imbalance + b.imbalance > score.imbalance;
  }

  private isSpent(): boolean {
    if (++this.pairs > MOST.pairs || this.effort.cells > MOST.cells) this.isOver = true;
    return this.isOver;
  }

  private weighPair(field: Field, across: Across, up: Up): void {
    const bound = boundPair(field, across.bound, up.at, up.bound);
    if (this.isBeaten(bound)) return;
    up.scribed ??= scribedSlivers(field, up.at);
    bound.slivers += up.scribed;
    if (this.isBeaten(bound)) return;
    if (!across.tiles) {
      across.tiles = columnsOf(field, across.at);
      this.effort.cells += field.shifts.length;
    }
    up.tiles ??= runsOf(field.up, up.at);
    const start = { x: across.at, columns: across.tiles, y: up.at, courses: up.tiles };
    const score = weigh(field, start, this.effort, this.best?.score ?? null);
    if (!score) return;
    const order = this.best ? compareScores(score, this.best.score) : -1;
    if (order > 0) return;
    const rank = rankOf({ field, x: across.at, y: up.at });
    if (order === 0 && rank >= this.best!.rank) return;
    this.best = { field, x: across.at, y: up.at, score, rank };
  }
}

/** The most named starts of one direction that are weighed before all others. */
export const MOST_NAMED = 12;

/** How simply a lattice is said. */
function rankOf({ field, x, y }: Pick<Found, "field" | "x" | "y">): number {
  return RANKS * sayAcross(field, x).rank + sayUp(field, y).rank;
}

const NOTHING: Bound = { slivers: 0, underHalf: 0, imbalance: 0 };

const RANKS = 1_000_000;
