import type { Nm } from "../../measure/index.js";
import type { Score } from "../solved.js";
import { acrossOrigin, upOrigin } from "../start.js";
import { type Bound, boundPair } from "./bounds.js";
import { MOST, MOST_NAMED } from "./budget.js";
import { compareScores } from "./compare.js";
import type { Field } from "./field.js";
import { narrowDown } from "./narrow-down.js";
import { namedAcross, namedUp, sayAcross, sayUp } from "./named-starts.js";
import { compareBounds, pairsInOrder } from "./pairs-in-order.js";
import { runsOf } from "./runs.js";
import { scribedAcross, scribedUp, withScribed } from "./scribed.js";
import { type Across, acrossHalf, type StartsAtJoint, type Up, upHalf } from "./starts-at-joint.js";
import type { Effort } from "./effort.js";
import { columnsOf, weigh, weighQuickly } from "./weigh.js";

/** A lattice that was weighed. */
export interface Found {
  readonly field: Field;
  readonly x: Nm;
  readonly y: Nm;
  readonly score: Score;
  /** How simply its starts are said; the lower, the simpler. */
  readonly rank: number;
}

/** Weighs pairs of starts and keeps the best; pairs whose bound is worse are passed over. */
export class Walk {
  /** `most` is how many looks it may take; looking through all starts at a joint goes on to the most of all. */
  constructor(private readonly most: number) {}

  private found: Found | null = null;
  private readonly effort: Effort = { cells: 0 };
  /** How many pairs of starts were weighed or shown to be no better. */
  weighed = 0;
  /** Whether it was stopped before all critical starts were weighed or shown to be no better. */
  isStopped = false;

  get best(): Found {
    return this.found!;
  }

  weighNamed(field: Field): void {
    const { wall, lay } = field.ground;
    const across = lay.across ? [lay.across] : namedAcross(wall).slice(0, MOST_NAMED);
    const up = lay.up ? [lay.up] : namedUp(wall).slice(0, MOST_NAMED);
    const ups = up.map((start) => upHalf(field, upOrigin(field.ground, start)));
    for (const start of across) {
      const half = acrossHalf(field, acrossOrigin(field.ground, start));
      for (const other of ups) {
        if (this.found && this.isSpent()) return;
        this.weighPair(field, half, other);
      }
    }
  }

  /** Weighs the pairs of critical starts at a joint that may be the best. */
  searchJoint({ field, across, up }: StartsAtJoint): void {
    this.weighed += across.length * up.length;
    for (const { x, y, bound } of pairsInOrder(across, up)) {
      if (this.isBeaten(bound) || this.isSpent()) return;
      this.weighPair(field, x, y);
    }
  }

  /**
   * Weighs all starts at one joint, where slopes and round holes make more of them critical; whether
   * it was done before the most that a lay is weighed with was used up.
   */
  searchAll(field: Field): boolean {
    const { best, boxes, isStopped } = narrowDown(field, this.best, this.effort, MOST.cells);
    this.weighed += boxes;
    if (best !== this.best) this.found = { field, ...best, rank: rankOf({ field, ...best }) };
    return !isStopped;
  }

  isBeaten(bound: Bound): boolean {
    return this.found !== null && compareBounds(bound, this.found.score) > 0;
  }

  private isSpent(): boolean {
    this.effort.cells += 0.25;
    if (this.effort.cells > this.most) this.isStopped = true;
    return this.isStopped;
  }

  private weighPair(field: Field, across: Across, up: Up): void {
    const bound = boundPair(field, across.bound, up.at, up.bound);
    if (this.isBeaten(bound)) return;
    across.scribed ??= scribedAcross(field, { from: across.at, to: across.at });
    up.scribed ??= scribedUp(field, { from: up.at, to: up.at });
    if (this.isBeaten(withScribed(withScribed(bound, across.scribed), up.scribed))) return;
    if (!across.tiles) {
      across.tiles = columnsOf(field, across.at);
      this.effort.cells += field.shifts.length;
    }
    up.tiles ??= runsOf(field.up, up.at);
    const start = { x: across.at, columns: across.tiles, y: up.at, courses: up.tiles };
    const atMost = this.found?.score ?? null;
    const quick = weighQuickly(field, start, this.effort, atMost);
    if (!quick) return;
    const rank = rankOf({ field, x: across.at, y: up.at });
    if (!this.isBetter(quick, rank)) return;
    const score = weigh(field, start, this.effort, atMost);
    if (!score || !this.isBetter(score, rank)) return;
    this.found = { field, x: across.at, y: up.at, score, rank };
  }

  private isBetter(score: Score, rank: number): boolean {
    if (!this.found) return true;
    return (compareScores(score, this.found.score) || rank - this.found.rank) < 0;
  }
}

/** How simply a lattice is said. */
function rankOf({ field, x, y }: Pick<Found, "field" | "x" | "y">): number {
  return RANKS * sayAcross(field, x).rank + sayUp(field, y).rank;
}

const RANKS = 1_000_000;
