import type { Nm } from "../../measure/index.js";
import type { Opening } from "../../model/index.js";
import type { Box } from "../box.js";
import type { Tally } from "../choose/cell.js";
import type { Axis, Field } from "../choose/field.js";
import { firstPast, lastBefore } from "../lattice.js";
import { compareCosts, type Cost, sumOf } from "./cost.js";
import { cutOut } from "./cut-out.js";
import { placesOnTiles, reachingOf } from "./free-places.js";
import type { Standing } from "./local-tally.js";
import type { PlaceAt } from "./places-at.js";
import type { Fields, WallFields } from "./wall-fields.js";
import { hasMore, noCost } from "./wanting.js";

/** One opening's way to stand. */
export interface Way {
  readonly i: number;
  readonly at: Opening["at"];
  readonly box: Box;
  readonly missed: PlaceAt["missed"];
  /** What ways have in common that cut alike; null where that isn't told. */
  readonly kind: number | null;
}

/** By how much a wall costs more or less with openings in their places. */
export class WeighPlaces {
  /** What cuts of a kind come to, by the fields' ranks: 0 for the wall's own limits. */
  private readonly known = new Map<number, Map<number, Tally>>();

  constructor(private readonly fields: WallFields) {}

  /** What openings in these ways add; null when that is more than `bar`. */
  weigh(ways: readonly Way[], base: Fields, standing: Standing, bar: Cost | null): Cost | null {
    const { wanting, cutPlaces } = this.fields;
    const missed = missedBy(ways);
    // Whether a wall lays anything is told by itself, before all else.
    if (bar && bar[0]! < 0) return null;
    let isLevel = bar !== null && bar[0] === 0;
    let known: Tally | null = null;
    const own = () => (known ??= this.change(base.own, 0, ways, standing));
    for (const { place } of wanting.wishes) {
      const under = base.under.find((each) => each.place === place);
      if (under) missed.set(place, this.change(under.field, place, ways, standing).slivers);
      if (cutPlaces.includes(place)) missed.set(place, own().cuts);
      const more = missed.get(place) ?? 0;
      if (isLevel && more > bar![place]!) return null;
      if (isLevel) isLevel = more === bar![place];
    }
    if (isLevel && hasMore(own(), bar!)) return null;
    return this.added(missed, own());
  }

  /**
   * What an opening adds at least wherever it and the tiles are: by what is over and under it in the columns that it spans, and beside it in the
   * courses that run wholly along it: none of these pieces is the same.
   */
  leastOf(i: number): Cost {
    const { fields } = this;
    const { own } = fields.base(fields.drawn.stop).fields;
    const [across, up] = [reachingOf(fields, i, "across"), reachingOf(fields, i, "up")];
    const least: Cost[] = [];
    if (fields.roundOf(i, "y", own) === "nothing") {
      least.push(
        this.leastOfPieces(
          "up",
          i,
          [0],
          spanned(across.length, own.across),
          this.placesOf("up", i, [0]),
        ),
      );
    }
    if (fields.roundOf(i, "x", own) === "nothing") {
      const many = Math.floor(spanned(up.length, own.up) / own.shifts.length);
      least.push(
        this.leastOfPieces("across", i, own.shifts, many, this.placesOf("across", i, own.shifts)),
      );
    }
    return least.reduce(sumOf, noCost(fields.wanting));
  }

  /**
   * What the pieces beside an opening come to at least with tiles across from `x`, where ends of the wall
   * may cut these tiles too.
   */
  leastBeside(i: number, x: Nm, places: () => readonly PlaceAt[]): Cost {
    const { fields } = this;
    const { own } = fields.base(fields.drawn.stop).fields;
    if (fields.roundOf(i, "x", own) !== "ends") return noCost(fields.wanting);
    const { shifts } = own;
    const { length } = reachingOf(fields, i, "up");
    const many = Math.floor(spanned(length, own.up) / shifts.length);
    const origins = shifts.map((shift) => x + shift);
    const { left } = fields.boxOf(i);
    const drawn = fields.drawn.places[i]!.x;
    return this.leastOfPieces(
      "across",
      i,
      origins,
      many,
      places().map(({ at }) => left + at - drawn),
    );
  }

  /** What the pieces before and behind an opening come to at least, so many in each row from these origins. */
  private leastOfPieces(
    axis: "across" | "up",
    i: number,
    origins: readonly Nm[],
    many: number,
    begins: readonly Nm[],
  ): Cost {
    const { fields } = this;
    const { length } = reachingOf(fields, i, axis);
    const [own, ...under] = this.allFields();
    const ends =
      fields.roundOf(i, axis === "across" ? "x" : "y", own!) === "ends" ? own![axis] : null;
    let least: Cost | null = null;
    // Where no piece is too small, none costs less.
    const most = Math.max(
      ...[own!, ...under].flatMap((field) => [field[axis].sliver, field[axis].half]),
    );
    for (const from of many > 0 ? new Set(begins) : []) {
      const pieces = origins.flatMap((origin) =>
        piecesBeside(own![axis], origin, from, from + length, ends),
      );
      if (pieces.every((piece) => piece >= most)) return noCost(fields.wanting);
      const tooSmall = (size: Nm) => many * pieces.filter((piece) => piece < size).length;
      const missed = new Map(
        fields.first.under.map(
          ({ place }, k) => [place, tooSmall(under[k]![axis].sliver)] as const,
        ),
      );
      const slivers = tooSmall(own![axis].sliver);
      // Which are cut at both sides, and so held to half, is not told across a running bond.
      const isHeldToHalf = axis === "up" || !own!.judge.forcesEnds;
      const underHalf = isHeldToHalf ? Math.max(0, tooSmall(own![axis].half) - slivers) : 0;
      const cost = this.added(missed, { slivers, underHalf, cuts: 0, tiles: 0 });
      if (!least || compareCosts(cost, least) < 0) least = cost;
    }
    return least ?? noCost(fields.wanting);
  }

  private allFields(): readonly Field[] {
    const { own, under } = this.fields.base(this.fields.drawn.stop).fields;
    return [own, ...under.map(({ field }) => field)];
  }

  /** Where an opening's edges may critically meet tiles from these origins, within a module. */
  private placesOf(axis: "across" | "up", i: number, origins: readonly Nm[]): readonly Nm[] {
    const { first } = this.fields;
    const { module } = first.own[axis];
    const { length, size } = reachingOf(this.fields, i, axis);
    return this.allFields().flatMap((field) =>
      placesOnTiles({ min: 0, max: module }, { before: 0, length, size }, field[axis], origins),
    );
  }

  private added(missed: ReadonlyMap<number, number>, tally: Tally): Cost {
    const { slivers, underHalf, cuts, tiles } = tally;
    const misses = this.fields.wanting.wishes.map(({ place }) => missed.get(place) ?? 0);
    // Whether a wall lays anything is told by itself.
    return [0, ...misses, slivers, underHalf, 0, cuts, tiles, 0];
  }

  /** What changes in the tiles round openings; those of a kind have it in common. */
  private change(field: Field, place: number, ways: readonly Way[], standing: Standing): Tally {
    const { effort } = this.fields;
    const boxes = ways.map(({ box }) => box);
    const kind = ways.length === 1 ? ways[0]!.kind : null;
    if (kind === null) return cutOut(field, boxes, standing, effort);
    const ofField = this.known.get(place) ?? new Map<number, Tally>();
    const known = ofField.get(kind) ?? cutOut(field, boxes, standing, effort);
    this.known.set(place, ofField.set(kind, known));
    return known;
  }
}

function missedBy(ways: readonly Way[]): Map<number, number> {
  const missed = new Map<number, number>();
  for (const way of ways) {
    for (const { place, missed: more } of way.missed) {
      missed.set(place, more + (missed.get(place) ?? 0));
    }
  }
  return missed;
}

/** How many whole tiles a length spans at least, wherever they are. */
function spanned(length: Nm, { face, module }: Axis): number {
  return Math.max(0, Math.floor((length - face) / module));
}

/** The sizes of the cut pieces that a row leaves before and behind a stretch; of `ends`, what is seen within them. */
function piecesBeside(
  { face, module }: Axis,
  origin: Nm,
  from: Nm,
  to: Nm,
  ends: Axis | null,
): Nm[] {
  const start = origin + firstPast(origin, face, module, from) * module;
  const end = origin + lastBefore(origin, module, to) * module + face;
  const [low, high] = ends ? [ends.clearLow, ends.clearHigh] : [start, end];
  return [from - Math.max(start, low), Math.min(end, high) - to].filter((size) => size > 0);
}
