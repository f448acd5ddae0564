import type { Nm } from "../../measure/index.js";
import type { Bound } from "./bounds.js";
import { compareBounds } from "./pairs-in-order.js";
import type { Span } from "./start-box.js";

/** Neighbouring starts of one direction. */
export interface Stretch extends Span {
  /** What each of them costs at least, whatever the start in the other direction. */
  readonly bound: Bound;
  /** Its two parts; null where it is one start. */
  halves(): readonly Stretch[] | null;
}

/** What each start of a span costs at least; no critical start is within a span but at its ends. */
export type BoundOf = (span: Span) => Bound;

/** The one start at a place. */
export function oneStart(place: Nm, boundOf: BoundOf): Stretch {
  return new Slab({ from: place, to: place }, boundOf);
}

/**
 * All starts of one direction, within a module from the first critical one. The critical starts are
 * starts of their own, so that a stretch is parted at them before it is parted in the middle.
 */
export function allStarts(critical: readonly Nm[], module: Nm, boundOf: BoundOf): Stretch {
  const slabs = critical.flatMap((place, i) => {
    const next = critical[i + 1] ?? critical[0]! + module;
    const at = new Slab({ from: place, to: place }, boundOf);
    return next > place + 1 ? [at, new Slab({ from: place + 1, to: next - 1 }, boundOf)] : [at];
  });
  return together(slabs);
}

function together(slabs: readonly Slab[]): Stretch {
  if (slabs.length === 1) return slabs[0]!;
  const middle = slabs.length >> 1;
  const halves = [together(slabs.slice(0, middle)), together(slabs.slice(middle))];
  const [a, b] = [halves[0]!, halves[1]!];
  const bound = compareBounds(a.bound, b.bound) <= 0 ? a.bound : b.bound;
  return { from: a.from, to: b.to, bound, halves: () => halves };
}

/** Neighbouring starts between which only slopes and round holes are met otherwise. */
class Slab implements Stretch {
  readonly from: Nm;
  readonly to: Nm;
  readonly bound: Bound;

  constructor(
    span: Span,
    private readonly boundOf: BoundOf,
  ) {
    this.from = span.from;
    this.to = span.to;
    this.bound = boundOf(span);
  }

  halves(): readonly Stretch[] | null {
    const { from, to, boundOf } = this;
    if (from === to) return null;
    const middle = Math.floor((from + to) / 2);
    return [new Slab({ from, to: middle }, boundOf), new Slab({ from: middle + 1, to }, boundOf)];
  }
}
