import type { Nm } from "../../measure/index.js";
import type { Score } from "../solved.js";
import { acrossOrigin, upOrigin } from "../start.js";
import { imbalanceAcross, imbalanceUp } from "./balance.js";
import { type Bound, boundAcross, boundUp } from "./bounds.js";
import { type Differs, type Edges, edgesOf, type Known, type Least, leastOf } from "./box-least.js";
import { compareScores } from "./compare.js";
import type { Field } from "./field.js";
import { leastImbalanceAcross, leastImbalanceUp } from "./imbalance-least.js";
import { LeastFirst } from "./least-first.js";
import { criticalAcross, criticalUp } from "./origins.js";
import { sumOf } from "./pairs-in-order.js";
import { runsOf } from "./runs.js";
import { scribedAcross, scribedUp, withScribed } from "./scribed.js";
import type { Span, StartBox } from "./start-box.js";
import { Stretch } from "./stretch.js";
import { type Effort, LOOKS } from "./effort.js";
import { columnsOf, lowestCourse, weigh, weighQuickly } from "./weigh.js";

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

/**
 * Finds a start better than `best` among all of one joint, or proves that there is none, unless it
 * takes more than `most` looks in all. The starts are a box, which is halved, and halved again,
 * the most promising part first; a part is left out when what a start in it costs at least is no
 * better than the best known one.
 */
export function narrowDown(field: Field, best: Score, effort: Effort, most: number): Narrowed {
  const { ground } = field;
  const { lay } = ground;
  const across = lay.across
    ? Stretch.at(acrossOrigin(ground, lay.across), acrossBound)
    : Stretch.all(criticalAcross(field), field.across.module, acrossBound);
  const up = lay.up
    ? Stretch.at(upOrigin(ground, lay.up), upBound)
    : Stretch.all(criticalUp(field), field.up.module, upBound);
  return new Narrowing(field, best, effort, most).narrow(across, up);

  function acrossBound(span: Span, isEven: boolean): Bound {
    effort.cells += LOOKS.bound;
    const { from, to } = span;
    const imbalance = leastImbalanceAcross({ field, x0: from, x1: to, y0: 0, y1: 0 });
    const faults = isEven ? boundAcross(field, from) : NOTHING;
    return withScribed({ ...faults, imbalance }, scribedAcross(field, span));
  }

  function upBound(span: Span, isEven: boolean): Bound {
    effort.cells += LOOKS.bound;
    const { from, to } = span;
    const imbalance = leastImbalanceUp({ field, x0: 0, x1: 0, y0: from, y1: to });
    const faults = isEven ? boundUp(field, lowestCourse(field, from)) : NOTHING;
    return withScribed({ ...faults, imbalance }, scribedUp(field, span));
  }
}

const NOTHING = { slivers: 0, underHalf: 0 };

/** A box that is still to be looked into, and what its starts cost at least. */
interface Open {
  readonly across: Stretch;
  readonly up: Stretch;
  readonly least: Score;
  readonly depth: number;
  readonly known: Known | null;
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

  narrow(across: Stretch, up: Stretch): Narrowed {
    const { lay, joint } = this.field.ground;
    const jointOver = joint - lay.joint.min;
    const least = { slivers: 0, underHalf: 0, imbalance: 0, cuts: 0, tiles: 1, jointOver };
    this.add({ across, up, least, depth: 0, known: null });
    for (let box = this.open.pop(); box; box = this.open.pop()) {
      if (compareScores(box.least, this.best) >= 0) break;
      if (this.effort.cells > this.most) return this.narrowed(true);
      this.boxes++;
      this.look(box);
    }
    return this.narrowed(false);
  }

  private narrowed(isStopped: boolean): Narrowed {
    const { better, boxes } = this;
    return { best: better, boxes, isStopped };
  }

  private add(open: Open): void {
    const bound = { ...open.least, ...sumOf(open.across.bound, open.up.bound), cuts: 0, tiles: 1 };
    const least = compareScores(bound, open.least) > 0 ? bound : open.least;
    if (compareScores(least, this.best) < 0) this.open.push({ ...open, least });
  }

  /** Opens the halves of a box if it may hold a better start. */
  private look({ across, up, depth, least: before, known }: Open): void {
    const { field } = this;
    const box = { field, x0: across.from, x1: across.to, y0: up.from, y1: up.to };
    if (isOneStart(box)) {
      this.weighStart(box, known);
      return;
    }
    const imbalance = across.bound.imbalance + up.bound.imbalance;
    const least = this.leastOf(box, imbalance, known);
    if (!least) return;
    const score = this.weighStart(bestBalanced(box), least.known);
    if (score && compareScores(score, least.score) <= 0) return;
    const most = compareScores(before, least.score) > 0 ? before : least.score;
    const part = { least: most, depth: depth + 1, known: least.known };
    if (isHalvedAcross(box, least.differs)) {
      for (const half of across.halves) this.add({ ...part, across: half, up });
    } else {
      for (const half of up.halves) this.add({ ...part, across, up: half });
    }
  }

  private leastOf(box: StartBox, imbalance: Nm, known: Known | null): Least | null {
    const { edges, best, effort } = this;
    effort.cells += LOOKS.box;
    return leastOf(box, { edges, best, effort, imbalance, known });
  }

  /** Weighs a start, given what is known of a box that holds it; null when it is no better than the best. */
  private weighStart(box: StartBox, known: Known | null): Score | null {
    const { field, x0: x, y0 } = box;
    const imbalance = imbalanceAcross(field.balance, x) + imbalanceUp(field.balance, y0);
    if (!this.leastOf(box, imbalance, known)) return null;
    const y = lowestCourse(field, y0);
    const start = { x, columns: columnsOf(field, x), y, courses: runsOf(field.up, y) };
    const isBetter = (score: Score | null) => score && compareScores(score, this.best) < 0;
    if (!isBetter(weighQuickly(field, start, this.effort, this.best))) return null;
    const score = weigh(field, start, this.effort, this.best);
    if (!score || !isBetter(score)) return null;
    this.best = score;
    this.better = { field, x, y, score };
    return score;
  }
}

function isOneStart({ x0, x1, y0, y1 }: StartBox): boolean {
  return x0 === x1 && y0 === y1;
}

/** The best balanced of a box's corners. */
function bestBalanced({ field, x0, x1, y0, y1 }: StartBox): StartBox {
  const x = leastAt(cornersOf(x0, x1), (place) => imbalanceAcross(field.balance, place));
  const y = leastAt(cornersOf(y0, y1), (place) => imbalanceUp(field.balance, place));
  return { field, x0: x, x1: x, y0: y, y1: y };
}

/** Whether a box is halved across: the direction in which its starts differ most. */
function isHalvedAcross(box: StartBox, differs: Differs): boolean {
  const sizes = { x: box.x1 - box.x0, y: box.y1 - box.y0 };
  if (sizes.x === 0 || sizes.y === 0) return sizes.x > 0;
  if (differs.across !== differs.up) return differs.across;
  if (differs.across) return sizes.x >= sizes.y;
  const change = balanceChange(box);
  return change.x >= change.y;
}

/** How much the balance changes from end to end of a box; where it doesn't, nothing is gained by halving. */
function balanceChange({ field, x0, x1, y0, y1 }: StartBox): { x: Nm; y: Nm } {
  const { balance } = field;
  return {
    x: Math.abs(imbalanceAcross(balance, x1) - imbalanceAcross(balance, x0)),
    y: Math.abs(imbalanceUp(balance, y1) - imbalanceUp(balance, y0)),
  };
}

function cornersOf(from: Nm, to: Nm): Nm[] {
  return to - from < 3 ? [from, to] : [from, from + 1, to - 1, to];
}

function leastAt(places: readonly Nm[], costOf: (at: Nm) => Nm): Nm {
  return places.reduce((best, at) => (costOf(at) < costOf(best) ? at : best));
}
