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
import { scribedAcross, scribedUp } from "./scribed.js";
import type { StartBox } from "./start-box.js";
import { type Bounding, Stretch } from "./stretch.js";
import { LOOKS } from "./budget.js";
import type { Effort } from "./effort.js";
import { columnsOf, lowestCourse, weigh, weighQuickly } from "./weigh.js";

/** A start that was weighed. */
export interface Weighed {
  readonly x: Nm;
  readonly y: Nm;
  readonly score: Score;
}

/** What narrowing down came to. */
export interface Narrowed {
  readonly best: Weighed;
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
export function narrowDown(field: Field, best: Weighed, effort: Effort, most: number): Narrowed {
  const { ground } = field;
  const { lay } = ground;
  const across = boundingAcross(field, effort);
  const up = boundingUp(field, effort);
  const allAcross = lay.across
    ? Stretch.at(acrossOrigin(ground, lay.across), across)
    : Stretch.all(criticalAcross(field), field.across.module, across);
  const allUp = lay.up
    ? Stretch.at(upOrigin(ground, lay.up), up)
    : Stretch.all(criticalUp(field), field.up.module, up);
  const narrowing = new Narrowing(field, best, effort);
  const all = narrowing.begin(allAcross, allUp);
  const spent = effort.cells;
  const left = Math.max(0, most - spent);
  let isWhole = narrowing.narrow(all, spent + left * AT_ONCE);
  if (!isWhole) {
    // A good start shortens what is left, and is to be had if it is stopped.
    for (let score = null; score !== narrowing.best.score;) {
      score = narrowing.best.score;
      const x = Stretch.at(narrowing.best.x, across);
      narrowing.narrow(narrowing.begin(x, allUp), spent + left * WITH_LINES);
      const y = Stretch.at(narrowing.best.y, up);
      narrowing.narrow(narrowing.begin(allAcross, y), spent + left * WITH_LINES);
    }
    isWhole = narrowing.narrow(all, most);
  }
  return { best: narrowing.best, boxes: narrowing.boxes, isStopped: !isWhole };
}

/** How the starts across of a field are bounded. */
function boundingAcross(field: Field, effort: Effort): Bounding {
  return {
    even: (span) => {
      effort.cells += LOOKS.bound;
      const { from, to } = span;
      const imbalance = leastImbalanceAcross({ field, x0: from, x1: to, y0: 0, y1: 0 });
      return { ...boundAcross(field, from), imbalance };
    },
    scribed: (span) => {
      effort.cells += LOOKS.bound;
      return scribedAcross(field, span);
    },
  };
}

/** How the starts up of a field are bounded. */
function boundingUp(field: Field, effort: Effort): Bounding {
  return {
    even: (span) => {
      effort.cells += LOOKS.bound;
      const { from, to } = span;
      const imbalance = leastImbalanceUp({ field, x0: 0, x1: 0, y0: from, y1: to });
      return { ...boundUp(field, lowestCourse(field, from)), imbalance };
    },
    scribed: (span) => {
      effort.cells += LOOKS.bound;
      return scribedUp(field, span);
    },
  };
}

const NOTHING: Bound = { slivers: 0, underHalf: 0, imbalance: 0 };

/** The part of the effort after which starts in line with the best one are looked through, and after them. */
const AT_ONCE = 0.3;
const WITH_LINES = 0.6;

/** A box that is still to be looked into, and what its starts cost at least. */
interface Open {
  readonly across: Stretch;
  readonly up: Stretch;
  readonly least: Score;
  readonly depth: number;
  readonly known: Known | null;
}

class Narrowing {
  boxes = 0;
  private readonly edges: Edges;
  private readonly jointOver: Nm;
  constructor(
    private readonly field: Field,
    public best: Weighed,
    private readonly effort: Effort,
  ) {
    this.edges = edgesOf(field);
    this.jointOver = field.ground.joint - field.ground.lay.joint.min;
  }

  /** All starts of two directions, to be looked through. */
  begin(across: Stretch, up: Stretch): LeastFirst<Open> {
    const least = this.sumOf(NOTHING, NOTHING);
    // The most promising box first; of equally promising ones the smallest.
    const open = new LeastFirst<Open>(
      (a, b) => compareScores(a.least, b.least) || b.depth - a.depth,
    );
    this.add({ across, up, least, depth: 0, known: null }, open);
    return open;
  }

  /** Looks through boxes until all are done, or it took so many looks in all; whether they are done. */
  narrow(open: LeastFirst<Open>, most: number): boolean {
    for (let box = open.pop(); box && !this.isNoBetter(box.least); box = open.pop()) {
      if (this.effort.cells > most) {
        open.push(box);
        return false;
      }
      this.boxes++;
      this.look(box, open);
    }
    return true;
  }

  private isNoBetter(score: Score): boolean {
    return compareScores(score, this.best.score) >= 0;
  }

  /** Adds a box, less what alone costs too much at its ends, unless all of it does. */
  private add(box: Open, open: LeastFirst<Open>): void {
    const across = this.drawnIn(box.across, box.up.bound);
    const up = across && this.drawnIn(box.up, across.bound);
    if (!across || !up) return;
    const bound = this.sumOf(across.bound, up.bound);
    const least = compareScores(bound, box.least) > 0 ? bound : box.least;
    if (!this.isNoBetter(least)) open.push({ ...box, across, up, least });
  }

  /** A stretch without the parts that can't be better; null where none can. */
  private drawnIn(stretch: Stretch, other: Bound): Stretch | null {
    let rest = stretch;
    while (rest.hasCritical) {
      const better = rest.halves.filter((half) => !this.isNoBetter(this.sumOf(half.bound, other)));
      if (better.length === 2) return rest;
      if (!better[0]) return null;
      rest = better[0];
    }
    return rest;
  }

  private sumOf(a: Bound, b: Bound): Score {
    return { ...sumOf(a, b), cuts: 0, tiles: 1, jointOver: this.jointOver };
  }

  /** Opens the halves of a box if it may hold a better start. */
  private look({ across, up, depth, least: before, known }: Open, open: LeastFirst<Open>): void {
    const { field } = this;
    const box = { field, x0: across.from, x1: across.to, y0: up.from, y1: up.to };
    if (isOneStart(box)) {
      this.weighStart(box, known);
      return;
    }
    const imbalance = across.imbalance + up.imbalance;
    const least = this.leastOf(box, imbalance, known);
    if (!least) return;
    const score = this.weighStart(bestBalanced(box), least.known);
    if (score && compareScores(score, least.score) <= 0) return;
    const most = compareScores(before, least.score) > 0 ? before : least.score;
    const part = { least: most, depth: depth + 1, known: least.known };
    if (isHalvedAcross(box, least.differs)) {
      for (const half of across.halves) this.add({ ...part, across: half, up }, open);
    } else {
      for (const half of up.halves) this.add({ ...part, across, up: half }, open);
    }
  }

  private leastOf(box: StartBox, imbalance: Nm, known: Known | null): Least | null {
    const { edges, best, effort } = this;
    effort.cells += LOOKS.box;
    return leastOf(box, { edges, best: best.score, effort, imbalance, known });
  }

  /** Weighs a start, given what is known of a box that holds it; null when it is no better than the best. */
  private weighStart(box: StartBox, known: Known | null): Score | null {
    const { field, x0: x, y0 } = box;
    const imbalance = imbalanceAcross(field.balance, x) + imbalanceUp(field.balance, y0);
    if (!this.leastOf(box, imbalance, known)) return null;
    const y = lowestCourse(field, y0);
    const start = { x, columns: columnsOf(field, x), y, courses: runsOf(field.up, y) };
    const quick = weighQuickly(field, start, this.effort, this.best.score);
    if (!quick || this.isNoBetter(quick)) return null;
    const score = weigh(field, start, this.effort, this.best.score);
    if (!score || this.isNoBetter(score)) return null;
    this.best = { x, y, score };
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
