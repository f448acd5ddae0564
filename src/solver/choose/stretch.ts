import type { Nm } from "../../measure/index.js";
import type { Bound } from "./bounds.js";
import { compareBounds } from "./pairs-in-order.js";
import { type Scribed, withScribed } from "./scribed.js";
import type { Span } from "./start-box.js";

/** How the starts of one direction are bounded, whatever the start in the other one. */
export interface Bounding {
  /** Bounds all starts of a span that no straight edge makes critical, or one that is. */
  readonly even: (span: Span) => Bound;
  /** What the pieces along measured sides cost at least, for any span. */
  readonly scribed: (span: Span) => Scribed;
}

/** A critical start, or all between two of them. */
interface Slab extends Span {
  readonly bound: Bound;
}

/** The slabs that the starts of one direction are parted into. */
interface Parted {
  readonly slabs: readonly Slab[];
  readonly bounding: Bounding;
}

/**
 * Neighbouring starts of one direction. Critical starts are parts of their own, so that a stretch is
 * parted at them before it is parted in the middle. What it costs and its halves are worked out
 * once, when they are asked for.
 */
export class Stretch implements Span {
  private knownBound: Bound | null = null;
  private knownHalves: readonly [Stretch, Stretch] | null = null;
  private knownImbalance: Nm | null = null;

  private constructor(
    readonly from: Nm,
    readonly to: Nm,
    private readonly parted: Parted,
    /** The slabs that it is made of, the last one left out; it may be a part of one. */
    private readonly slabs: readonly [number, number],
  ) {}

  /** The one start at a place. */
  static at(place: Nm, bounding: Bounding): Stretch {
    return Stretch.of([{ from: place, to: place }], bounding);
  }

  /** All starts of one direction: a module from the first critical start. */
  static all(critical: readonly Nm[], module: Nm, bounding: Bounding): Stretch {
    const spans = critical.flatMap((place, i) => {
      const next = critical[i + 1] ?? critical[0]! + module;
      const at = { from: place, to: place };
      return next > place + 1 ? [at, { from: place + 1, to: next - 1 }] : [at];
    });
    return Stretch.of(spans, bounding);
  }

  private static of(spans: readonly Span[], bounding: Bounding): Stretch {
    const slabs = spans.map(({ from, to }) => ({ from, to, bound: bounding.even({ from, to }) }));
    return new Stretch(slabs[0]!.from, slabs.at(-1)!.to, { slabs, bounding }, [0, slabs.length]);
  }

  /** What each of its starts costs at least. */
  get bound(): Bound {
    return (this.knownBound ??= withScribed(this.evenBound, this.parted.bounding.scribed(this)));
  }

  /** The least that any of its starts is out of balance. */
  get imbalance(): Nm {
    return (this.knownImbalance ??= this.isWhole
      ? Math.min(...this.ownSlabs.map(({ bound }) => bound.imbalance))
      : this.parted.bounding.even(this).imbalance);
  }

  get isOneStart(): boolean {
    return this.from === this.to;
  }

  /** Whether it is made of several slabs. */
  get hasCritical(): boolean {
    return this.slabs[1] - this.slabs[0] > 1;
  }

  /** Its two parts; not for one start. */
  get halves(): readonly [Stretch, Stretch] {
    return (this.knownHalves ??=
      this.slabs[1] - this.slabs[0] === 1 ? this.inTheMiddle() : this.atSlabs());
  }

  private get evenBound(): Bound {
    const least = this.ownSlabs.reduce((a, b) =>
      compareBounds(b.bound, a.bound) < 0 ? b : a,
    ).bound;
    return this.isWhole ? least : { ...least, imbalance: this.imbalance };
  }

  private get ownSlabs(): readonly Slab[] {
    return this.parted.slabs.slice(...this.slabs);
  }

  /** Whether it has all of its slabs, and not only a part of one. */
  private get isWhole(): boolean {
    const { slabs } = this.parted;
    return this.from === slabs[this.slabs[0]]!.from && this.to === slabs[this.slabs[1] - 1]!.to;
  }

  private inTheMiddle(): [Stretch, Stretch] {
    const { from, to, parted, slabs } = this;
    const middle = Math.floor((from + to) / 2);
    return [new Stretch(from, middle, parted, slabs), new Stretch(middle + 1, to, parted, slabs)];
  }

  private atSlabs(): [Stretch, Stretch] {
    const { from, to, parted, slabs } = this;
    const middle = (slabs[0] + slabs[1]) >> 1;
    return [
      new Stretch(from, parted.slabs[middle - 1]!.to, parted, [slabs[0], middle]),
      new Stretch(parted.slabs[middle]!.from, to, parted, [middle, slabs[1]]),
    ];
  }
}
