import type { Nm } from "../../measure/index.js";
import { boundAcross } from "../choose/bounds.js";
import { namedAcross } from "../choose/named-starts.js";
import { criticalAcross, within } from "../choose/origins.js";
import { acrossOrigin } from "../start.js";
import { ROOM_LOOKS } from "./budget.js";
import { compareCosts, type Cost } from "./cost.js";
import { extremesOf } from "./extremes.js";
import {
  placesByEdges,
  placesOnMiddles,
  placesOnTiles,
  placesTied,
  reachingOf,
} from "./free-places.js";
import { products, unique } from "./products.js";
import { leastCost } from "./wanting.js";
import type { WallFields } from "./wall-fields.js";

/** A start across with the places across of what is free, and what they cost at least. */
export interface AcrossWay {
  readonly x: Nm;
  readonly places: readonly Nm[];
  readonly least: Cost;
}

/** The ways across that may be the best, in the order of what they cost at least; of equals, the one that is said most simply first. */
export function waysAcross(fields: WallFields): AcrossWay[] {
  return new WaysAcross(fields).all();
}

class WaysAcross {
  private readonly isTied: boolean;

  constructor(private readonly fields: WallFields) {
    const { across } = fields.lay;
    this.isTied =
      across !== null &&
      "centre" in across &&
      across.centre.on === "opening" &&
      across.centre.opening.free.x !== null;
  }

  all(): AcrossWay[] {
    const { fields } = this;
    const { free, wall } = fields;
    const ways: AcrossWay[] = [];
    for (const x of fields.someWays(this.origins())) {
      if (fields.isSpent(ways.length)) break;
      const lists = free.x.map((i) => fields.somePlaces(this.placesOf(i, x)));
      for (const places of fields.someWays(products(lists))) {
        if (fields.isSpent(ways.length)) break;
        if (this.isStated(x, places)) ways.push(this.way(x, places));
      }
    }
    if (ways.length === 0) {
      const drawn = free.x.map((i) => wall.openings[i]!.at.x);
      ways.push(this.way(this.statedAt(drawn), drawn));
    }
    return [...fields.bestWays(ways.sort((a, b) => compareCosts(a.least, b.least)))];
  }

  private origins(): Nm[] {
    const { first, wall } = this.fields;
    const { ground, across } = first.own;
    const stated = ground.lay.across;
    if (stated && !this.isTied) return [acrossOrigin(ground, stated)];
    const named = namedAcross(wall).map((start) => acrossOrigin(ground, start));
    const critical = extremesOf(this.fields, "x").flatMap(({ own, under }) =>
      [own, ...under.map(({ field }) => field)].flatMap(criticalAcross),
    );
    return unique([...named, ...critical].map((x) => within(x, across.module, across.low)));
  }

  private placesOf(i: number, x: Nm): readonly Nm[] {
    const { own, under } = this.fields.first;
    const range = this.fields.wall.openings[i]!.free.x!;
    if (this.isTied) {
      const origin = this.statedAt(this.fields.free.x.map((j) => (j === i ? range.min : 0)));
      return placesTied(range, origin, own.across.module, [x]);
    }
    const tiles = (range.max - range.min) / own.across.module + 1;
    this.fields.effort.cells += ROOM_LOOKS.places * own.shifts.length * tiles * (1 + under.length);
    const reaching = reachingOf(own, i, "across");
    const origins = own.shifts.map((shift) => x + shift);
    const axes = [own.across, ...under.map(({ field }) => field.across)];
    return unique([
      // Where it is drawn it is apart from the rest.
      this.fields.wall.openings[i]!.at.x,
      ...axes.flatMap((axis) => placesOnTiles(range, reaching, axis, origins)),
      ...axes.flatMap((axis) => placesByEdges(range, reaching, axis)),
      ...placesOnMiddles(range, reaching, own.across, x),
    ]);
  }

  /** A start that is stated on an opening which may move is where the opening is. */
  private isStated(x: Nm, places: readonly Nm[]): boolean {
    if (!this.isTied) return true;
    return (this.statedAt(places) - x) % this.fields.first.own.across.module === 0;
  }

  private statedAt(places: readonly Nm[]): Nm {
    const { own } = this.fields.at(this.fields.moved("x", places));
    return acrossOrigin(own.ground, own.ground.lay.across!);
  }

  private way(x: Nm, places: readonly Nm[]): AcrossWay {
    const { fields } = this;
    const settled = fields.at(fields.moved("x", places));
    const { own, under } = fields.loose(settled);
    const missed = new Map(
      under.map(({ place, field }) => [place, boundAcross(field, x).slivers] as const),
    );
    fields.addMissed(missed, "across", settled, { x, y: 0 });
    const bounds = own.shifts.length * (1 + own.obstacles.length) * (1 + under.length);
    fields.effort.cells += ROOM_LOOKS.bound * bounds;
    return { x, places, least: leastCost(fields.wanting, missed, boundAcross(own, x), 0) };
  }
}
