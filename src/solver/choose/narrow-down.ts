import type { Nm } from "../../measure/index.js";
import type { Score } from "../solved.js";
import { acrossOrigin, upOrigin } from "../start.js";
import { imbalanceAcross, imbalanceUp } from "./balance.js";
import { type Bound, boundAcross, boundUp } from "./bounds.js";
import { type Differs, type Edges, edgesOf, leastOf } from "./box-least.js";
import { compareScores } from "./compare.js";
import type { Field } from "./field.js";
import { LeastFirst } from "./least-first.js";
import { type BoundedPair, compareBounds, pairsInOrder } from "./pairs-in-order.js";
import { scribedAcross, scribedUp, withScribed } from "./scribed.js";
import { leastImbalanceAcross, leastImbalanceUp } from "./imbalance-least.js";
import { criticalAcross, criticalUp } from "./origins.js";
import { runsOf } from "./runs.js";
import type { Span, StartBox } from "./start-box.js";
import { columnsOf, type Effort, lowestCourse, weigh, weighQuickly } from "./weigh.js";

/** A start better than any known so far. */
export interface Better {
  readonly field: Field;
  readonly x: Nm;
  readonly y: Nm;
  readonly score: Score;
}

/** What narrowing down came to. */
export interface Narrowed {
  readonly best: Better | null;
  readonly boxes: number;
  /** Whether it was stopped before every start was weighed or shown to be no better. */
  readonly isStopped: boolean;
}

/** Neighbouring starts of one direction between which only slopes and round holes are met otherwise. */
interface Slab extends Span {
  /** What each of them costs at least, whatever the start in the other direction. */
  readonly bound: Bound;
}

/**
 * Finds a start better than `best` among all of one joint, or proves that there is none. The
 * critical starts of each direction part it into slabs; a pair of slabs that may hold a better one
 * is halved, and halved again, and each box is left out in which what a start costs at least is no
 * better than the best known one.
 */
export function narrowDown(field: Field, best: Score, effort: Effort, most: number): Narrowed {
  const { ground } = field;
  const { lay } = ground;
  const across = lay.across
    ? [slab(at(acrossOrigin(ground, lay.across)), acrossBound)]
    : slabsBetween(criticalAcross(field), field.across.module, acrossBound);
  const up = lay.up
    ? [slab(at(upOrigin(ground, lay.up)), upBound)]
    : slabsBetween(criticalUp(field), field.up.module, upBound);
  return new Narrowing(field, best, effort, most).narrow(across, up);

  function acrossBound(span: Span): Bound {
    const { from, to } = span;
    const imbalance = leastImbalanceAcross({ field, x0: from, x1: to, y0: 0, y1: 0 });
    return withScribed({ ...boundAcross(field, from), imbalance }, scribedAcross(field, span));
  }

  function upBound(span: Span): Bound {
    const { from, to } = span;
    const imbalance = leastImbalanceUp({ field, x0: 0, x1: 0, y0: from, y1: to });
    const bound = boundUp(field, lowestCourse(field, from));
    return withScribed({ ...bound, imbalance }, scribedUp(field, span));
  }
}

function at(place: Nm): Span {
  return { from: place, to: place };
}

function slab(span: Span, boundOf: (span: Span) => Bound): Slab {
  return { ...span, bound: boundOf(span) };
}

/** The critical starts themselves and what is between them, best bound first. */
function slabsBetween(
  critical: readonly Nm[],
  module: Nm,
  boundOf: (span: Span) => Bound,
): readonly Slab[] {
  const spans = critical.flatMap((place, i) => {
    const next = critical[i + 1] ?? critical[0]! + module;
    return next > place + 1 ? [at(place), { from: place + 1, to: next - 1 }] : [at(place)];
  });
  return spans
    .map((span) => slab(span, boundOf))
    .sort((a, b) => compareBounds(a.bound, b.bound) || a.from - b.from);
}

/** A box that is still to be looked into, and what its starts cost at least. */
interface Open {
  readonly box: StartBox;
  readonly least: Score;
  readonly depth: number;
}

class Narrowing {
  private better: Better | null = null;
  private boxes = 0;
  private readonly edges: Edges;
  /** The most promising box first; of equally promising ones the smallest. */
  private readonly open = new LeastFirst<Open>(
    (a, b) => compareScores(a.least, b.least) || b.depth - a.depth,
  );

  constructor(
    private readonly field: Field,
    private best: Score,
    private readonly effort: Effort,
    private readonly most: number,
  ) {
    this.edges = edgesOf(field);
  }

  narrow(across: readonly Slab[], up: readonly Slab[]): Narrowed {
    const pairs = pairsInOrder(across, up);
    let pair = pairs.next().value as BoundedPair<Slab, Slab> | undefined;
    for (;;) {
      while (pair && !isBeaten(this.best, pair.bound)) {
        const { x, y, bound } = pair;
        const first = this.open.pop();
        if (first) this.open.push(first);
        const least = { ...this.best, ...bound, cuts: 0, tiles: 1 };
        if (first && compareScores(first.least, least) < 0) break;
        const box = { field: this.field, x0: x.from, x1: x.to, y0: y.from, y1: y.to };
        this.open.push({ box, least, depth: 0 });
        pair = pairs.next().value as BoundedPair<Slab, Slab> | undefined;
      }
      const next = this.open.pop();
      if (!next || compareScores(next.least, this.best) >= 0) return this.narrowed(false);
      if (this.effort.cells > this.most) return this.narrowed(true);
      this.boxes++;
      this.effort.cells += 1;
      for (const half of this.narrowBox(next)) this.open.push(half);
    }
  }

  private narrowed(isStopped: boolean): Narrowed {
    const { better, boxes } = this;
    return { best: better, boxes, isStopped };
  }

  /** The halves of a box if it may hold a better start. */
  private narrowBox({ box, depth, least: known }: Open): readonly Open[] {
    if (isOneStart(box)) {
      this.weighBest(box);
      return [];
    }
    const least = leastOf(box, this.edges, this.best, this.effort);
    if (!least) return [];
    const score = this.weighBest(box);
    if (score && compareScores(score, least.score) <= 0) return [];
    const most = compareScores(known, least.score) > 0 ? known : least.score;
    return halvesOf(box, least.differs).map((half) => ({
      box: half,
      least: most,
      depth: depth + 1,
    }));
  }

  /** Weighs the best balanced of a box's corners. */
  private weighBest({ field, x0, x1, y0, y1 }: StartBox): Score | null {
    const x = leastAt(cornersOf(x0, x1), (place) => imbalanceAcross(field.balance, place));
    const y = leastAt(cornersOf(y0, y1), (place) => imbalanceUp(field.balance, place));
    const bottom = lowestCourse(field, y);
    const start = { x, columns: columnsOf(field, x), y: bottom, courses: runsOf(field.up, bottom) };
    const quick = weighQuickly(field, start, this.effort, this.best);
    if (!quick || compareScores(quick, this.best) >= 0) return quick;
    const score = weigh(field, start, this.effort, this.best);
    if (score && compareScores(score, this.best) < 0) {
      this.best = score;
      this.better = { field, x, y: bottom, score };
    }
    return score;
  }
}

/** The halves of a box across the direction in which its starts differ most. */
function halvesOf(box: StartBox, differs: Differs): StartBox[] {
  const { x0, x1, y0, y1 } = box;
  const sizes = { x: x1 - x0, y: y1 - y0 };
  const isAcross =
    differs.across === differs.up
      ? differs.across
        ? sizes.x >= sizes.y
        : balanceChange(box).x >= balanceChange(box).y
      : differs.across;
  if ((isAcross && sizes.x > 0) || sizes.y === 0) {
    const middle = Math.floor((x0 + x1) / 2);
    return [{ ...box, x1: middle }, { ...box, x0: middle + 1 }];
  }
  const middle = Math.floor((y0 + y1) / 2);
  return [{ ...box, y1: middle }, { ...box, y0: middle + 1 }];
}

/** How much the balance changes from end to end of a box; where it doesn't, nothing is gained by halving. */
function balanceChange({ field, x0, x1, y0, y1 }: StartBox): { x: Nm; y: Nm } {
  const { balance } = field;
  return {
    x: Math.abs(imbalanceAcross(balance, x1) - imbalanceAcross(balance, x0)),
    y: Math.abs(imbalanceUp(balance, y1) - imbalanceUp(balance, y0)),
  };
}

function isBeaten(best: Score, bound: Bound): boolean {
  return compareBounds(bound, best) > 0;
}

function isOneStart(box: StartBox): boolean {
  return box.x0 === box.x1 && box.y0 === box.y1;
}

function cornersOf(from: Nm, to: Nm): Nm[] {
  return to - from < 3 ? [from, to] : [from, from + 1, to - 1, to];
}

function leastAt(places: readonly Nm[], costOf: (at: Nm) => Nm): Nm {
  return places.reduce((best, at) => (costOf(at) < costOf(best) ? at : best));
}
