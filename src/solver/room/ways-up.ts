import type { Nm } from "../../measure/index.js";
import { endsOf } from "../choose/balance.js";
import { boundUp } from "../choose/bounds.js";
import { namedUp } from "../choose/named-starts.js";
import { criticalUp } from "../choose/origins.js";
import { lowestCourse } from "../choose/weigh.js";
import { upOrigin } from "../start.js";
import { ROOM_LOOKS } from "./budget.js";
import { compareCosts, type Cost } from "./cost.js";
import { extremesOf } from "./extremes.js";
import { placesByEdges, placesOnTiles, placesTied, reachingOf } from "./free-places.js";
import { products, unique } from "./products.js";
import { leastCost } from "./wanting.js";
import type { WallFields } from "./wall-fields.js";

/** A height of the courses with the heights of what is free, and what they cost at least. */
export interface UpWay {
  readonly y: Nm;
  readonly places: readonly Nm[];
  /** The height that the tile stops at. */
  readonly stop: Nm;
  readonly least: Cost;
}

/** The heights that a wall's courses may have, and the ways to settle the rest at one of them. */
export class WaysUp {
  /** Whether the height is left to the solver, or goes with what is. */
  readonly isOpen: boolean;
  private readonly known = new Map<Nm, readonly UpWay[]>();

  constructor(private readonly fields: WallFields) {
    this.isOpen = fields.lay.up === null || this.tiedOpening() !== null || this.isTopTied();
  }

  /** The heights that are critical for this wall, or the one that is stated. */
  heights(): readonly Nm[] {
    const { first, lay, wall } = this.fields;
    if (!this.isOpen) return [this.lowest(upOrigin(first.own.ground, lay.up!))];
    const named = namedUp(wall).map((start) => upOrigin(first.own.ground, start));
    const critical = extremesOf(this.fields, "y").flatMap(({ own, under }) =>
      [own, ...under.map(({ field }) => field)].flatMap(criticalUp),
    );
    return this.fields.someHeights(unique([...named, ...critical].map((y) => this.lowest(y))));
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
    const { fields } = this;
    const lists = fields.free.y.map((i) => fields.somePlaces(this.placesOf(i, y)));
    const stops = fields.somePlaces(this.stopsAt(y));
    const ways: UpWay[] = [];
    for (const places of fields.someWays(products(lists))) {
      for (const stop of stops) {
        if (fields.isSpent(ways.length)) break;
        if (this.isStated(y, places, stop)) ways.push(this.way(y, places, stop));
      }
    }
    ways.sort((a, b) => compareCosts(a.least, b.least));
    this.known.set(y, ways);
    return ways;
  }

  private stopsAt(y: Nm): readonly Nm[] {
    const { wall, first } = this.fields;
    const { stop, size } = wall;
    if (!stop) return [size.up];
    const { own, under } = first;
    if (this.isTopTied()) {
      const places = this.fields.free.y.map((i) => wall.openings[i]!.at.y);
      return placesTied(stop, this.statedAt(places, stop.min), own.up.module, [y]);
    }
    // The top takes all above it: only the edge at which it begins meets tiles.
    const reaching = { before: size.up - own.region.bounds.top, length: 0, size: 0 };
    // The top course is in balance where it is cut as the bottom one is.
    const { low } = endsOf(own.balance.up, y);
    return unique([
      ...placesOnTiles(stop, { ...reaching, before: reaching.before + low }, own.up, [y]),
      ...[own.up, ...under.map(({ field }) => field.up)].flatMap((axis) => [
        ...placesOnTiles(stop, reaching, axis, [y]),
        ...placesByEdges(stop, reaching, axis),
      ]),
    ]);
  }

  private placesOf(i: number, y: Nm): readonly Nm[] {
    const { wall, first, free } = this.fields;
    const { own, under } = first;
    const opening = wall.openings[i]!;
    const range = opening.free.y!;
    if (this.tiedOpening() === i) {
      const lowest = free.y.map((j) => wall.openings[j]!.free.y!.min);
      return placesTied(range, this.statedAt(lowest, wall.size.up), own.up.module, [y]);
    }
    const tiles = (range.max - range.min) / own.up.module + 1;
    this.fields.effort.cells += ROOM_LOOKS.places * tiles * (1 + under.length);
    const reaching = reachingOf(own, i, "up");
    return unique([
      // Where it is drawn it is apart from the rest.
      opening.at.y,
      ...[own.up, ...under.map(({ field }) => field.up)].flatMap((axis) => [
        ...placesOnTiles(range, reaching, axis, [y]),
        ...placesByEdges(range, reaching, axis),
      ]),
    ]);
  }

  /** The number of the opening that a stated height goes with, where it may move. */
  private tiedOpening(): number | null {
    const { lay, wall } = this.fields;
    if (lay.up?.kind !== "at-opening" || !lay.up.opening.free.y) return null;
    return wall.openings.indexOf(lay.up.opening);
  }

  /** Whether a stated height goes with a top that is left free. */
  private isTopTied(): boolean {
    const { lay, wall } = this.fields;
    return wall.stop !== null && lay.up?.kind === "full-course" && lay.up.from === "top";
  }

  private isStated(y: Nm, places: readonly Nm[], stop: Nm): boolean {
    if (this.tiedOpening() === null && !this.isTopTied()) return true;
    return (this.statedAt(places, stop) - y) % this.fields.first.own.up.module === 0;
  }

  private statedAt(places: readonly Nm[], stop: Nm): Nm {
    const { own } = this.fields.at(this.fields.moved("y", places, stop));
    return upOrigin(own.ground, own.ground.lay.up!);
  }

  private way(y: Nm, places: readonly Nm[], stop: Nm): UpWay {
    const { fields } = this;
    const settled = fields.at(fields.moved("y", places, stop));
    const { own, under } = fields.loose(settled);
    const missed = new Map(
      under.map(({ place, field }) => [place, boundUp(field, y).slivers] as const),
    );
    fields.addMissed(missed, "up", settled, { x: 0, y });
    fields.effort.cells += ROOM_LOOKS.bound * (1 + own.obstacles.length) * (1 + under.length);
    const jointOver = fields.joint - fields.lay.joint.min;
    const least = leastCost(fields.wanting, missed, boundUp(own, y), jointOver);
    return { y, places, stop, least };
  }
}
