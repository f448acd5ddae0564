import type { Nm } from "../../measure/index.js";
import { endsOf, imbalanceUp } from "../choose/balance.js";
import { type Bound, boundUp } from "../choose/bounds.js";
import { namedUp } from "../choose/named-starts.js";
import { criticalUp } from "../choose/origins.js";
import { lowestCourse } from "../choose/weigh.js";
import { upOrigin } from "../start.js";
import { ROOM_LOOKS, ROOM_MOST } from "./budget.js";
import { compareCosts, type Cost } from "./cost.js";
import { withConstant } from "./constant-places.js";
import { placesByEdges, placesOnTiles, placesTied } from "./free-places.js";
import type { PlacesAt } from "./places-at.js";
import { isNoLess, leastCost } from "./wanting.js";
import type { WallFields } from "./wall-fields.js";

/** A height of the courses with a height to stop at, and what they cost at least. */
export interface UpWay {
  readonly y: Nm;
  /** The height that the tile stops at. */
  readonly stop: Nm;
  readonly least: Cost;
}

/** The heights that a wall's courses may have at one joint, and where the tile may stop with each. */
export class WaysUp {
  /** Whether the height is left to the solver, or goes with what is. */
  readonly isOpen: boolean;
  private readonly known = new Map<Nm, readonly UpWay[]>();
  private knownLeast: Cost | null = null;
  private knownTelling: readonly Nm[] | null = null;

  constructor(
    private readonly fields: WallFields,
    private readonly places: PlacesAt,
  ) {
    this.isOpen = fields.lay.up === null || places.tied !== null || this.isTopTied();
    if (this.meetsTop()) fields.isThinned = true;
  }

  /** The heights that are critical for this wall, or the one that is stated. */
  heights(): readonly Nm[] {
    return this.fields.someHeights(this.heightsWith(true));
  }

  /** The heights that are critical without what may move: they tell what any height costs at least. */
  get telling(): readonly Nm[] {
    return (this.knownTelling ??= this.heightsWith(false));
  }

  /** What any height costs at least; null where none can be had. */
  get least(): Cost | null {
    this.knownLeast ??= this.telling.reduce<Cost | null>(
      (least, y) => this.leastAt(y, least) ?? least,
      null,
    );
    return this.knownLeast;
  }

  /** What a height costs at least; null where that is surely no less than `most`, or can't be had. */
  leastAt(height: Nm, most: Cost | null): Cost | null {
    const y = this.lowest(height);
    if (!this.fields.wall.stop && !this.known.has(y)) {
      return this.costAt(y, this.fields.drawn.stop, most);
    }
    const least = this.at(y)[0]?.least;
    return least && (!most || compareCosts(least, most) < 0) ? least : null;
  }

  /** The bottom of the lowest course that may have a piece, for a lattice with a course at this height. */
  lowest(y: Nm): Nm {
    return lowestCourse(this.fields.first.own, y);
  }

  /** The ways with a course at this height, in the order of what they cost at least. */
  at(height: Nm): readonly UpWay[] {
    const y = this.lowest(height);
    const known = this.known.get(y);
    if (known) return known;
    const ways: UpWay[] = [];
    for (const stop of this.fields.some(this.stopsAt(y), ROOM_MOST.stops)) {
      if (this.fields.isSpent(ways.length)) break;
      ways.push({ y, stop, least: this.costAt(y, stop, null)! });
    }
    ways.sort((a, b) => compareCosts(a.least, b.least));
    this.known.set(y, ways);
    return ways;
  }

  private heightsWith(isAll: boolean): Nm[] {
    const { first, lay, wall, drawn } = this.fields;
    if (!this.isOpen) return [this.lowest(upOrigin(first.own.ground, lay.up!))];
    const named = namedUp(wall).map((start) => upOrigin(first.own.ground, start));
    const stops = wall.stop ? [drawn.stop, wall.stop.max] : [drawn.stop];
    const critical = stops.flatMap((stop) => {
      const { own, under } = this.fields.base(stop).fields;
      return [own, ...under.map(({ field }) => field)].flatMap((field) =>
        criticalUp(isAll ? withConstant(this.fields, "y", field) : field),
      );
    });
    const tied = isAll ? this.places.tiedOrigins() : [];
    return [...new Set([...named, ...tied, ...critical].map((y) => this.lowest(y)))];
  }

  private stopsAt(y: Nm): readonly Nm[] {
    const { wall, drawn } = this.fields;
    const { stop } = wall;
    if (!stop) return [drawn.stop];
    const { own, under } = this.fields.base(drawn.stop).fields;
    if (this.isTopTied()) {
      const tied = placesTied(stop, this.statedAt(stop.min), own.up.module, [y]);
      return tied.filter((at) => (this.statedAt(at) - y) % own.up.module === 0);
    }
    // The top takes all above it: only the edge at which it begins meets tiles.
    const reaching = { before: drawn.stop - own.region.bounds.top, length: 0, size: 0 };
    // The top course is in balance where it is cut as the bottom one is.
    const { low } = endsOf(own.balance.up, y);
    const all = [
      ...placesOnTiles(stop, { ...reaching, before: reaching.before + low }, own.up, [y]),
      ...[own.up, ...under.map(({ field }) => field.up)].flatMap((axis) => {
        const { sliver, half, face, edges, clearLow, clearHigh } = axis;
        return [
          ...placesOnTiles(stop, reaching, axis, [y]),
          ...placesByEdges(stop, reaching, [sliver, half, face], [clearLow, clearHigh, ...edges]),
        ];
      }),
    ];
    return [...new Set(all)];
  }

  /** Whether a stated height goes with a top that is left free. */
  private isTopTied(): boolean {
    const { lay, wall } = this.fields;
    return wall.stop !== null && lay.up?.kind === "full-course" && lay.up.from === "top";
  }

  /** Whether what may move may come near a top that is free itself: they are not tried to each other. */
  private meetsTop(): boolean {
    const { fields } = this;
    const { stop } = fields.wall;
    const { face } = fields.lay.tile;
    return stop !== null && fields.free.y.some((i) => fields.reachOf(i).top + face.up > stop.min);
  }

  private statedAt(stop: Nm): Nm {
    const { own } = this.fields.at({ ...this.fields.drawn, stop });
    return upOrigin(own.ground, own.ground.lay.up!);
  }

  private costAt(y: Nm, stop: Nm, most: Cost | null): Cost | null {
    const { fields } = this;
    const { own, under } = fields.base(stop).loose;
    const missed = new Map<number, number>();
    fields.addMissed(missed, "up", own, { x: 0, y });
    this.places.addLeastMissed(missed, y);
    const jointOver = fields.joint - fields.lay.joint.min;
    const isOver = (bound: Bound) =>
      most !== null && isNoLess(fields.wanting, missed, bound, jointOver, most);
    const imbalance = imbalanceUp(own.balance, y);
    const unknown = { slivers: 0, underHalf: 0, imbalance };
    if (isOver(unknown)) return null;
    for (const { place, field } of under) {
      this.count();
      missed.set(place, boundUp(field, y, 0).slivers);
      if (isOver(unknown)) return null;
    }
    this.count();
    const bound = boundUp(own, y, imbalance);
    return isOver(bound) ? null : leastCost(fields.wanting, missed, bound, jointOver);
  }

  private count(): void {
    const { own } = this.fields.first;
    this.fields.effort.cells += ROOM_LOOKS.bound * (1 + own.obstacles.length);
  }
}
