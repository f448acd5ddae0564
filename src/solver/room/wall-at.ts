import type { Nm } from "../../measure/index.js";
import type { Lay, Wall } from "../../model/index.js";
import type { Effort } from "../choose/effort.js";
import type { Field } from "../choose/field.js";
import { ROOM_MOST } from "./budget.js";
import { compareCosts, type Cost, isOver, sumOf } from "./cost.js";
import type { Settled } from "./settle.js";
import { type Wanting, worstCost } from "./wanting.js";
import { isApart, WallFields } from "./wall-fields.js";
import { type AcrossWay, waysAcross } from "./ways-across.js";
import { WallWeighing } from "./wall-weighing.js";
import { type UpWay, WaysUp } from "./ways-up.js";

/** A wall laid with its courses at one height, the best way. */
export interface WallFound {
  readonly cost: Cost;
  readonly x: Nm;
  readonly y: Nm;
  readonly settled: Settled;
  /** The wall's field as it is settled. */
  readonly field: Field;
}

/** One wall at one joint: what it costs at least with its courses at some height, and at best. */
export class WallAt {
  /** The heights that are critical for this wall alone, or the one that is stated. */
  readonly heights: readonly Nm[];
  /** Whether its height is left to the solver. */
  readonly isOpen: boolean;
  private readonly fields: WallFields;
  private readonly across: readonly AcrossWay[];
  private readonly up: WaysUp;
  private readonly found = new Map<Nm, WallFound>();

  constructor(
    private readonly wanting: Wanting,
    readonly wall: Wall,
    readonly lay: Lay,
    readonly joint: Nm,
    private readonly effort: Effort,
    /** Whether what may move has to stay apart from the rest. */
    private readonly isStrict: boolean,
    sharers: number,
  ) {
    this.fields = new WallFields(wanting, wall, lay, joint, effort, sharers);
    this.across = waysAcross(this.fields);
    this.up = new WaysUp(this.fields);
    this.isOpen = this.up.isOpen;
    this.heights = this.up.heights();
  }

  /** Whether some ways or heights were left out. */
  get isThinned(): boolean {
    return this.fields.isThinned;
  }

  /** At most the wall's share of some heights. */
  someHeights(heights: readonly Nm[]): readonly Nm[] {
    return this.fields.someHeights(heights);
  }

  /** What the wall costs at least. */
  get least(): Cost {
    return this.heights
      .map((y) => this.leastAt(y))
      .reduce((a, b) => (compareCosts(b, a) < 0 ? b : a));
  }

  /** What the wall costs at least with a course at this height. */
  leastAt(height: Nm): Cost {
    const [best] = this.up.at(height);
    return best ? sumOf(best.least, this.across[0]!.least) : worstCost(this.wanting);
  }

  /** The bottom of the lowest course that may have a piece, for a lattice with a course at this height. */
  lowest(height: Nm): Nm {
    return this.up.lowest(height);
  }

  /** The best way to lay the wall with a course at this height; null when none is as good as `most`. */
  bestAt(height: Nm, most: Cost | null): WallFound | null {
    const y = this.lowest(height);
    const known = this.found.get(y);
    if (known) return most && compareCosts(known.cost, most) > 0 ? null : known;
    let best: WallFound | null = null;
    for (const up of this.up.at(y)) {
      for (const across of this.across) {
        const bar = best?.cost ?? most;
        if (bar && isOver(across.least, up.least, bar)) break;
        if (best && this.isSpent()) break;
        const found = this.weigh(across, up, bar);
        if (found && (!best || compareCosts(found.cost, best.cost) < 0)) best = found;
      }
    }
    if (!best || (most && compareCosts(best.cost, most) > 0)) return null;
    this.found.set(y, best);
    return best;
  }

  isSpent(): boolean {
    return this.effort.cells > ROOM_MOST.cells;
  }

  /** The wall laid in one way; null as soon as it is sure to cost more than `bar`. */
  private weigh(
    { x, ...across }: AcrossWay,
    { y, ...up }: UpWay,
    bar: Cost | null,
  ): WallFound | null {
    const { fields, effort } = this;
    const settled = this.settledBy(across.places, up);
    const at = fields.at(settled);
    if (this.isStrict && fields.isFree && !isApart(at.own)) return null;
    effort.cells += at.own.shifts.length;
    const weighing = new WallWeighing(fields, at, { x, y }, bar);
    const cost = weighing.cost();
    return cost && { cost, x, y, settled, field: at.own };
  }

  private settledBy(across: readonly Nm[], { places, stop }: Omit<UpWay, "y">): Settled {
    const { free, drawn } = this.fields;
    return {
      stop,
      places: drawn.places.map((at, i) => ({
        x: free.x.includes(i) ? across[free.x.indexOf(i)]! : at.x,
        y: free.y.includes(i) ? places[free.y.indexOf(i)]! : at.y,
      })),
    };
  }
}
