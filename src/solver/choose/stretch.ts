import type { Nm } from "../../measure/index.js";
import type { Bound } from "./bounds.js";
import type { Span } from "./start-box.js";

/**
 * What each start of a span costs at least, whatever the start in the other direction. Only where no
 * start in the span is critical (`isEven`) does one stand for all.
 */
export type BoundOf = (span: Span, isEven: boolean) => Bound;

/** The spans that critical starts part a direction into, and how they are bounded. */
interface Parted {
  readonly slabs: readonly Span[];
  readonly boundOf: BoundOf;
}

/**
 * Neighbouring starts of one direction. Critical starts are parts of their own, so that a stretch is
 * parted at them before it is parted in the middle. Its bound and its halves are worked out once,
 * when they are asked for.
 */
export class Stretch implements Span {
  private known: Bound | null = null;
  private parts: readonly [Stretch, Stretch] | null = null;

  private constructor(
    readonly from: Nm,
    readonly to: Nm,
    private readonly parted: Parted,
    /** The slabs that it is made of, the last one left out; it may be a part of one. */
    private readonly slabs: readonly [number, number],
  ) {}

  /** The one start at a place. */
  static at(place: Nm, boundOf: BoundOf): Stretch {
    return Stretch.of([{ from: place, to: place }], boundOf);
  }

  /** All starts of one direction: a module from the first critical start. */
  static all(critical: readonly Nm[], module: Nm, boundOf: BoundOf): Stretch {
    const slabs = critical.flatMap((place, i) => {
      const next = critical[i + 1] ?? critical[0]! + module;
      const at = { from: place, to: place };
      return next > place + 1 ? [at, { from: place + 1, to: next - 1 }] : [at];
    });
    return Stretch.of(slabs, boundOf);
  }

  private static of(slabs: readonly Span[], boundOf: BoundOf): Stretch {
    return new Stretch(slabs[0]!.from, slabs.at(-1)!.to, { slabs, boundOf }, [0, slabs.length]);
  }

  get bound(): Bound {
    return (this.known ??= this.parted.boundOf(this, this.isEven));
  }

  get isOneStart(): boolean {
    return this.from === this.to;
  }

  /** Its two parts; not for one start. */
  get halves(): readonly [Stretch, Stretch] {
    return (this.parts ??= this.isEven ? this.partedInTheMiddle() : this.partedAtSlabs());
  }

  private get isEven(): boolean {
    return this.slabs[1] - this.slabs[0] === 1;
  }

  private partedInTheMiddle(): [Stretch, Stretch] {
    const { from, to, parted, slabs } = this;
    const middle = Math.floor((from + to) / 2);
    return [
      new Stretch(from, middle, parted, slabs),
      new Stretch(middle + 1, to, parted, slabs),
    ];
  }

  private partedAtSlabs(): [Stretch, Stretch] {
    const { from, to, parted, slabs } = this;
    const middle = (slabs[0] + slabs[1]) >> 1;
    return [
      new Stretch(from, parted.slabs[middle - 1]!.to, parted, [slabs[0], middle]),
      new Stretch(parted.slabs[middle]!.from, to, parted, [middle, slabs[1]]),
    ];
  }
}
