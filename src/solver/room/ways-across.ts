import type { Nm } from "../../measure/index.js";
import { imbalanceAcross } from "../choose/balance.js";
import { type Bound, boundAcross } from "../choose/bounds.js";
import { namedAcross } from "../choose/named-starts.js";
import { criticalAcross, within } from "../choose/origins.js";
import { acrossOrigin } from "../start.js";
import { ROOM_LOOKS, ROOM_MOST } from "./budget.js";
import { compareCosts, type Cost, sumOf } from "./cost.js";
import { withConstant } from "./constant-places.js";
import type { PlacesAt } from "./places-at.js";
import { isNoLess, leastCost } from "./wanting.js";
import type { WallFields } from "./wall-fields.js";

/** A start across, and what it costs at least wherever what may move stands. */
export interface AcrossWay {
  readonly x: Nm;
  readonly least: Cost;
}

/** The starts across of a wall at one joint. */
export class WaysAcross {
  private knownLeast: Cost | null = null;
  private knownAll: readonly AcrossWay[] | null = null;

  constructor(
    private readonly fields: WallFields,
    private readonly places: PlacesAt,
    /** What openings that may move add at least with tiles from here. */
    private readonly moving: (x: Nm) => Cost | null,
  ) {}

  /** What any start costs at least: those that are critical without what may move tell it. */
  get least(): Cost {
    return (this.knownLeast ??= this.knownAll?.[0]!.least ?? this.leastOf(this.origins(false)));
  }

  /** Those that may be the best, in the order of what they cost at least; of equals, the one that is said most simply first. */
  get all(): readonly AcrossWay[] {
    return (this.knownAll ??= this.fields
      .some(this.origins(true), ROOM_MOST.origins)
      .map((x) => this.way(x))
      .sort((a, b) => compareCosts(a.least, b.least)));
  }

  /** A start with a tile's left edge at `x`, if any is at the solver's choice; null where another is stated. */
  wayAt(x: Nm): AcrossWay | null {
    const { across } = this.fields.first.own;
    return this.isOpen ? this.way(within(x, across.module, across.low)) : null;
  }

  /** Whether the start is left to the solver, or goes with what is. */
  get isOpen(): boolean {
    return this.fields.first.own.ground.lay.across === null || this.places.tied !== null;
  }

  private way(x: Nm): AcrossWay {
    const [least, more] = [this.costAt(x, null)!, this.moving(x)];
    return { x, least: more ? sumOf(least, more) : least };
  }

  private leastOf(origins: readonly Nm[]): Cost {
    let least: Cost | null = null;
    for (const x of origins) least = this.costAt(x, least) ?? least;
    return least!;
  }

  private origins(isAll: boolean): Nm[] {
    const { first, wall, drawn } = this.fields;
    const { ground, across } = first.own;
    const stated = ground.lay.across;
    if (stated && !this.isOpen) return [acrossOrigin(ground, stated)];
    const named = namedAcross(wall).map((start) => acrossOrigin(ground, start));
    const { own, under } = this.fields.base(drawn.stop).fields;
    const critical = [own, ...under.map(({ field }) => field)].flatMap((field) =>
      criticalAcross(isAll ? withConstant(this.fields, "x", field) : field),
    );
    const tied = isAll ? this.places.tiedOrigins() : [];
    const all = [...named, ...tied, ...critical].map((x) => within(x, across.module, across.low));
    return [...new Set(all)];
  }

  /** What a start costs at least; null where that is surely no less than `most`. */
  private costAt(x: Nm, most: Cost | null): Cost | null {
    const { fields } = this;
    const { own, under } = fields.base(fields.drawn.stop).loose;
    const missed = new Map<number, number>();
    fields.addMissed(missed, "across", own, { x, y: 0 });
    this.places.addLeastMissed(missed, x);
    const isOver = (bound: Bound) =>
      most !== null && isNoLess(fields.wanting, missed, bound, 0, most);
    const imbalance = imbalanceAcross(own.balance, x);
    const unknown = { slivers: 0, underHalf: 0, imbalance };
    if (isOver(unknown)) return null;
    for (const { place, field } of under) {
      this.count();
      missed.set(place, boundAcross(field, x, 0).slivers);
      if (isOver(unknown)) return null;
    }
    this.count();
    const bound = boundAcross(own, x, imbalance);
    return isOver(bound) ? null : leastCost(fields.wanting, missed, bound, 0);
  }

  private count(): void {
    const { own } = this.fields.first;
    this.fields.effort.cells += ROOM_LOOKS.bound * own.shifts.length * (1 + own.obstacles.length);
  }
}
