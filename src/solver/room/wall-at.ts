import type { Nm } from "../../measure/index.js";
import type { Lay, Wall } from "../../model/index.js";
import type { Effort } from "../choose/effort.js";
import type { Field } from "../choose/field.js";
import { firstRow, startOf } from "../choose/weigh.js";
import type { LaidEnd } from "../carry-start.js";
import { latticeOf } from "../lattice.js";
import type { SettledStart } from "../start.js";
import { ROOM_MOST } from "./budget.js";
import { compareCosts, type Cost, isOver, lessBy, sumOf } from "./cost.js";
import { MovingOpenings } from "./moving-openings.js";
import { PlacesAt } from "./places-at.js";
import type { Settled } from "./settle.js";
import { type Wanting, worstCost } from "./wanting.js";
import { WallFields } from "./wall-fields.js";
import { within } from "../choose/origins.js";
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
  /** How its bond goes on from another wall's, where it does and can be said so. */
  readonly carried: SettledStart | null;
}

/** A wall's tiles as they stand with one start. */
export interface WallStanding extends LaidEnd {
  /** Whether the lowest course that may have a piece has one. */
  readonly isLowest: boolean;
}

/** A layout, as far as it tells of others. */
type Layout = Omit<WallFound, "field" | "carried">;

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
    this.places = {
      x: new PlacesAt(this.fields, "x", isStrict),
      y: new PlacesAt(this.fields, "y", isStrict),
    };
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
    const found = this.bestOf(y, this.across.all, most);
    if (found) this.found.set(y, found);
    return found;
  }

  /** The starts across that are critical for this wall alone, or the one that is stated. */
  get starts(): readonly AcrossWay[] {
    return this.across.all;
  }

  /** Whether its ends are straight, so that its courses end alike at all heights. */
  get isEven(): boolean {
    return this.fields.first.own.across.slopes.length === 0;
  }

  /** The place of a start within the first tiles, where all starts are told. */
  startAcross(x: Nm): Nm {
    const { across } = this.fields.first.own;
    return within(x, across.module, across.low);
  }

  /** A start across wherever it is; null where another one is stated. */
  startAt(x: Nm): AcrossWay | null {
    return this.across.wayAt(x);
  }

  /** The best way to lay the wall with one start and a course at this height; null when none is as good as `most`. */
  bestFrom(height: Nm, start: AcrossWay, most: Cost | null): WallFound | null {
    return this.bestOf(this.lowest(height), [start], most);
  }

  /** Where the wall's tiles stand with a start and a course at this height, from its course 1. */
  standing(height: Nm, x: Nm): WallStanding {
    const y = this.lowest(height);
    const { own } = this.fields.first;
    const first = firstRow(own, startOf(own, x, y), this.effort);
    const { region } = own.ground;
    const lattice = latticeOf(this.lay, this.joint, x, y + first * own.up.module);
    return { wall: this.wall, region, lattice, isLowest: first === 0 };
  }

  /** Looks that were taken at the wall from elsewhere. */
  spend(looks: number): void {
    this.effort.cells += looks;
  }

  /** The best of these starts with a course at `y`, the wall's lowest there. */
  private bestOf(y: Nm, starts: readonly AcrossWay[], most: Cost | null): WallFound | null {
    let best: Layout | null = null;
    const { moving } = this;
    for (const up of this.up.at(y)) {
      const least = moving ? sumOf(up.least, moving.least) : up.least;
      for (const across of starts) {
        const bar = best?.cost ?? most;
        if (bar && isOver(across.least, least, bar)) break;
        if (bar && this.isSpent()) break;
        const found = this.weigh(across, up, bar);
        if (found && (!best || compareCosts(found.cost, best.cost) < 0)) best = found;
      }
    }
    if (!best || (most && compareCosts(best.cost, most) > 0)) return null;
    return { ...best, carried: null, field: this.fields.at(best.settled).own };
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
