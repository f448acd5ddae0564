import type { Nm } from "../../measure/index.js";
import type { Lay, Wall } from "../../model/index.js";
import type { Effort } from "../choose/effort.js";
import type { Field } from "../choose/field.js";
import { firstRow, startOf } from "../choose/weigh.js";
import { ROOM_MOST } from "./budget.js";
import { compareCosts, type Cost, isOver, lessBy, sumOf } from "./cost.js";
import { MovingOpenings } from "./moving-openings.js";
import { PlacesAt } from "./places-at.js";
import type { Settled } from "./settle.js";
import { type Wanting, worstCost } from "./wanting.js";
import { WallFields } from "./wall-fields.js";
import { type AcrossWay, WaysAcross } from "./ways-across.js";
import { type UpWay, WaysUp } from "./ways-up.js";
import { weighWall } from "./weigh-wall.js";

/** A wall laid with its courses at one height, the best way. */
export interface WallFound {
  readonly cost: Cost;
  readonly x: Nm;
  readonly y: Nm;
  readonly settled: Settled;
  /** The wall's field as it is settled. */
  readonly field: Field;
}

/** A layout, as far as it tells of others. */
type Layout = Omit<WallFound, "field">;

/** One wall at one joint: what it costs at least with its courses at some height, and at best. */
export class WallAt {
  /** Whether its height is left to the solver. */
  readonly isOpen: boolean;
  private readonly fields: WallFields;
  private readonly across: WaysAcross;
  private readonly up: WaysUp;
  private readonly places: { readonly x: PlacesAt; readonly y: PlacesAt };
  private readonly found = new Map<Nm, WallFound>();
  private knownHeights: readonly Nm[] | null = null;
  private knownMoving: MovingOpenings | null = null;

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
    this.places = { x: new PlacesAt(this.fields, "x"), y: new PlacesAt(this.fields, "y") };
    this.across = new WaysAcross(
      this.fields,
      this.places.x,
      (x) => this.moving?.leastAt(x) ?? null,
    );
    this.up = new WaysUp(this.fields, this.places.y);
    this.isOpen = this.up.isOpen;
  }

  /** The heights that are critical for this wall alone, or the one that is stated. */
  get heights(): readonly Nm[] {
    return (this.knownHeights ??= this.up.heights());
  }

  /** Whether some ways or heights were left out. */
  get isThinned(): boolean {
    return this.fields.isThinned;
  }

  /** At most the wall's share of some heights. */
  someHeights<Height>(heights: readonly Height[]): readonly Height[] {
    return this.fields.someHeights(heights);
  }

  /** What the wall costs at least. */
  get least(): Cost {
    const { least } = this.up;
    return least ? sumOf(least, this.leastBesides) : worstCost(this.wanting);
  }

  /** What it costs at least whatever its height. */
  get leastBesides(): Cost {
    const { leastAcross, leastMoving } = this;
    return leastMoving ? sumOf(leastAcross, leastMoving) : leastAcross;
  }

  /** What its start across costs at least. */
  get leastAcross(): Cost {
    return this.across.least;
  }

  /** What openings that may move add at least; null where none may. */
  get leastMoving(): Cost | null {
    return this.moving?.least ?? null;
  }

  /** What the wall costs at least with a course at this height. */
  leastAt(height: Nm): Cost {
    return sumOf(this.leastOfHeight(height), this.leastBesides);
  }

  /** What a course at this height costs at least by itself. */
  leastOfHeight(height: Nm): Cost {
    return this.up.leastAt(height, null) ?? worstCost(this.wanting);
  }

  /** The heights by which it is told what the wall costs at least. */
  get tellingHeights(): readonly Nm[] {
    return this.up.telling;
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
    let best: Layout | null = null;
    const { moving } = this;
    for (const up of this.up.at(y)) {
      const least = moving ? sumOf(up.least, moving.least) : up.least;
      for (const across of this.across.all) {
        const bar = best?.cost ?? most;
        if (bar && isOver(across.least, least, bar)) break;
        if (best && this.isSpent()) break;
        const found = this.weigh(across, up, bar);
        if (found && (!best || compareCosts(found.cost, best.cost) < 0)) best = found;
      }
    }
    if (!best || (most && compareCosts(best.cost, most) > 0)) return null;
    const found = { ...best, field: this.fields.at(best.settled).own };
    this.found.set(y, found);
    return found;
  }

  isSpent(): boolean {
    return this.effort.cells > ROOM_MOST.cells;
  }

  /** The wall laid in one way, as well as what may move allows; null where that costs more than `bar`. */
  private weigh({ x }: AcrossWay, { y, stop }: UpWay, bar: Cost | null): Layout | null {
    const { fields, moving } = this;
    const base = fields.base(stop).fields;
    // What openings take may make a wall cost less.
    const start = startOf(base.own, x, y);
    const cost = weighWall(fields, base, start, moving ? null : bar);
    if (!cost) return null;
    if (!moving) return { cost, x, y, settled: { ...fields.drawn, stop } };
    const first = firstRow(base.own, start, this.effort);
    const placed = moving.best(base, { x, y, first }, bar && lessBy(bar, cost));
    if (!placed) return null;
    const whole = sumOf(cost, placed.cost);
    if (bar && compareCosts(whole, bar) > 0) return null;
    const places = fields.drawn.places.map((at, i) => placed.places.get(i) ?? at);
    return { cost: whole, x, y, settled: { stop, places } };
  }

  private get moving(): MovingOpenings | null {
    if (this.fields.moving.length === 0) return null;
    return (this.knownMoving ??= new MovingOpenings(this.fields, this.places, this.isStrict));
  }
}
