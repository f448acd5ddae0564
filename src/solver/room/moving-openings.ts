import type { Nm } from "../../measure/index.js";
import type { Opening } from "../../model/index.js";
import { overlaps } from "../box.js";
import { ROOM_MOST } from "./budget.js";
import { firstPast } from "../lattice.js";
import { partsOf } from "./clusters.js";
import { compareCosts, type Cost, sumOf } from "./cost.js";
import { placesByEdges, reachingOf } from "./free-places.js";
import type { Standing } from "./local-tally.js";
import { classOf } from "./place-classes.js";
import type { PlaceAt, PlacesAt } from "./places-at.js";
import { type Fields, isApart, type WallFields } from "./wall-fields.js";
import { noCost } from "./wanting.js";
import { WeighPlaces, type Way } from "./weigh-places.js";

/** Many more than the kinds of places of a wall. */
const MOST_KINDS = 2 ** 26;

/** Openings with places, and by how much they make a wall cost more or less. */
export interface Placed {
  readonly cost: Cost;
  readonly places: ReadonlyMap<number, Opening["at"]>;
}

/**
 * Finds the places of what may move on a wall. With the tiles where they are, openings that can't meet
 * one tile don't tell of each other: each has its best place. Those that can are tried together.
 */
export class MovingOpenings {
  private readonly groups: readonly (readonly number[])[];
  private readonly weighing: WeighPlaces;
  private knownLeast: Cost | null = null;
  private readonly kinds = new Map<string, number>();
  private readonly knownClassed = new Map<Fields, Map<string, readonly Classed[]>>();

  constructor(
    private readonly fields: WallFields,
    private readonly places: Readonly<Record<"x" | "y", PlacesAt>>,
    /** Whether what may move has to stay apart from the rest. */
    private readonly isStrict: boolean,
  ) {
    this.weighing = new WeighPlaces(fields);
    this.groups = groupsOf(fields);
    // Chains of three, or one as wide as the wall, may be critical in ways that are not tried.
    const isOdd = (group: readonly number[]) =>
      group.length > 2 || group.some((i) => this.isWide(i));
    if (this.groups.some(isOdd)) fields.isThinned = true;
  }

  /** What openings add to a wall's cost at least, wherever its tiles are. */
  get least(): Cost {
    return (this.knownLeast ??= this.sumOverMoving((i) => this.weighing.leastOf(i)));
  }

  /** What they add at least by what stands beside them with tiles across from here, where that isn't told in `least`. */
  leastAt(x: Nm): Cost {
    return this.sumOverMoving((i) => this.weighing.leastBeside(i, x, () => this.places.x.of(i, x)));
  }

  private sumOverMoving(leastOf: (i: number) => Cost): Cost {
    const { moving, wanting } = this.fields;
    return (this.isStrict ? moving.map(leastOf) : []).reduce(sumOf, noCost(wanting));
  }

  /** The best places of all that may move, if they add no more than `most`; null where they can't be kept apart from the rest. */
  best(base: Fields, standing: Standing, most: Cost | null): Placed | null {
    let cost = noCost(this.fields.wanting);
    const places = new Map<number, Opening["at"]>();
    for (const group of this.groups) {
      const found = this.bestOf(group, base, standing, this.groups.length === 1 ? most : null);
      if (!found) return null;
      cost = sumOf(cost, found.cost);
      for (const { i, at } of found.ways) places.set(i, at);
    }
    return { cost, places };
  }

  private bestOf(
    group: readonly number[],
    base: Fields,
    standing: Standing,
    most: Cost | null,
  ): { readonly cost: Cost; readonly ways: readonly Way[] } | null {
    let best: { cost: Cost; ways: readonly Way[] } | null = null;
    for (const ways of this.waysOf(group, base, standing)) {
      const cost = this.weighing.weigh(ways, base, standing, best?.cost ?? most);
      if (cost && (!best || compareCosts(cost, best.cost) < 0)) best = { cost, ways };
      if (this.fields.isSpent(best || most ? 1 : 0)) break;
    }
    return best;
  }

  /** Every way for a group to stand apart, in part where there are too many. */
  private waysOf(
    group: readonly number[],
    base: Fields,
    standing: Standing,
  ): readonly (readonly Way[])[] {
    if (!this.isStrict) return [group.map((i) => this.drawnWay(i, standing))];
    const most = Math.floor(ROOM_MOST.together ** (1 / group.length));
    const lists = group.map((i) => {
      const [xs, ys] = (["x", "y"] as const).map((direction) =>
        this.classed(i, group, base, standing, direction),
      ) as [readonly Classed[], readonly Classed[]];
      const ways = xs.flatMap((x) => ys.map((y) => this.wayOf(i, x, y)));
      const apart = ways.filter(({ box }) => isApart(box, base.own, []));
      return group.length === 1 ? apart : this.fields.some(apart, most);
    });
    return lists.reduce<readonly (readonly Way[])[]>(
      (all, list) =>
        all.flatMap((ways) =>
          list
            .filter(({ box }) => ways.every((other) => !overlaps(box, other.box)))
            .map((way) => [...ways, way]),
        ),
      [[]],
    );
  }

  private wayOf(i: number, x: Classed, y: Classed): Way {
    const at = { x: x.at, y: y.at };
    // No more kinds than this come up in one direction.
    const kind = x.kind !== null && y.kind !== null ? x.kind * MOST_KINDS + y.kind : null;
    const missed = y.missed.length === 0 ? x.missed : [...x.missed, ...y.missed];
    return { i, at, box: this.fields.boxAt(i, at), missed, kind };
  }

  private drawnWay(i: number, { x, y }: Standing): Way {
    const { at } = this.fields.wall.openings[i]!;
    const find = (all: readonly PlaceAt[], drawn: Nm): Classed => ({
      ...(all.find((place) => place.at === drawn) ?? all[0] ?? { at: drawn, missed: [] }),
      kind: null,
    });
    return this.wayOf(i, find(this.places.x.of(i, x), at.x), find(this.places.y.of(i, y), at.y));
  }

  /** The places of an opening in a direction, worked out once for all starts that are alike in it; beside another that moves, each time. */
  private classed(
    i: number,
    group: readonly number[],
    base: Fields,
    standing: Standing,
    direction: "x" | "y",
  ): readonly Classed[] {
    if (group.length > 1) return this.classify(i, group, base, standing, direction);
    const known = this.knownClassed.get(base) ?? new Map<string, readonly Classed[]>();
    this.knownClassed.set(base, known);
    const key = `${i} ${direction} ${standing[direction]} ${direction === "y" ? standing.first : ""}`;
    const found = known.get(key) ?? this.classify(i, group, base, standing, direction);
    known.set(key, found);
    return found;
  }

  /** Of places that cut whole tiles alike and miss as much, the first. */
  private classify(
    i: number,
    group: readonly number[],
    base: Fields,
    standing: Standing,
    direction: "x" | "y",
  ): readonly Classed[] {
    const places = this.placesOf(i, group, standing, direction);
    const round = this.fields.roundOf(i, direction, base.own);
    if (round === "other") return places.map((place) => ({ ...place, kind: null }));
    this.fields.effort.cells += places.length * base.own.shifts.length;
    const first = new Map<string, Classed>();
    for (const place of places) {
      const kind = this.kindOf(i, place.at, base, standing, direction, round === "ends");
      const key = `${kind} ${place.missed.map(({ missed }) => missed).join(" ")}`;
      if (!first.has(key)) first.set(key, { ...place, kind: this.numberOf(`${i} ${kind}`) });
    }
    return [...first.values()];
  }

  private numberOf(kind: string): number {
    const number = this.kinds.get(kind) ?? this.kinds.size;
    this.kinds.set(kind, number);
    return number;
  }

  private kindOf(
    i: number,
    at: Nm,
    base: Fields,
    { x, y, first }: Standing,
    direction: "x" | "y",
    hasEnds: boolean,
  ): string {
    const { fields } = this;
    const all = [base.own, ...base.under.map(({ field }) => field)];
    const { shifts, up } = base.own;
    const box = fields.boxAt(i, { ...fields.drawn.places[i]!, [direction]: at });
    if (direction === "x") {
      const taken = { from: box.left, to: box.right };
      const kinds = shifts.map((shift) => classOf(x + shift, taken, "across", all, hasEnds));
      return `${hasEnds ? x : ""} ${kinds.join("/")}`;
    }
    const row = firstPast(y, up.face, up.module, box.bottom);
    const kind = classOf(y, { from: box.bottom, to: box.top }, "up", all, hasEnds);
    return `${hasEnds ? `${y} ${first}` : ""} ${(row - first) % shifts.length} ${kind}`;
  }

  /** The places of an opening in a direction; beside another that moves, those that stand critically to its places too. */
  private placesOf(
    i: number,
    group: readonly number[],
    standing: Standing,
    direction: "x" | "y",
  ): readonly PlaceAt[] {
    const { fields } = this;
    const places = this.places[direction];
    const own = places.of(i, standing[direction]);
    const range = fields.wall.openings[i]!.free[direction];
    if (group.length === 1 || !range || places.tied === i) return own;
    const edges = group
      .filter((j) => j !== i)
      .flatMap((j) =>
        places.of(j, standing[direction]).flatMap(({ at }) => this.edgesAt(j, direction, at)),
      );
    const axis = direction === "x" ? "across" : "up";
    const sizes = [fields.first.own, ...fields.first.under.map(({ field }) => field)].flatMap(
      ({ [axis]: { sliver, half, face } }) => [sliver, half, face],
    );
    const more = placesByEdges(range, reachingOf(fields, i, axis), sizes, edges);
    const known = new Set(own.map(({ at }) => at));
    return [
      ...own,
      ...more.filter((at) => !known.has(at)).map((at) => places.seen(i, standing[direction], at)),
    ];
  }

  private edgesAt(i: number, direction: "x" | "y", at: Nm): readonly Nm[] {
    const box = this.fields.boxAt(i, { ...this.fields.drawn.places[i]!, [direction]: at });
    return direction === "x" ? [box.left, box.right] : [box.bottom, box.top];
  }

  /** Whether an opening may take all that others leave of a course, so that another would be the first. */
  private isWide(i: number): boolean {
    const { fields } = this;
    const { own } = fields.base(fields.drawn.stop).fields;
    const reach = fields.reachOf(i);
    const others = [
      ...own.obstacles,
      ...fields.moving.filter((j) => j !== i).map((j) => fields.boxOf(j)),
    ];
    const beside = others.filter(({ bottom, top }) => bottom < reach.top && top > reach.bottom);
    const taken = [fields.boxOf(i), ...beside].map(
      ({ left, right }) => right - left + 2 * fields.joint,
    );
    const { left, right } = own.region.bounds;
    return taken.reduce((sum, each) => sum + each) >= right - left;
  }
}

/** A place, and the class of how it cuts whole tiles; null where they may not be whole. */
interface Classed extends PlaceAt {
  readonly kind: number | null;
}

/** What may move, in groups that may meet the same tiles. */
function groupsOf(fields: WallFields): readonly (readonly number[])[] {
  const { moving } = fields;
  const pairs = moving.flatMap((i) =>
    moving
      .filter((j) => j > i && overlaps(fields.tilesRound(i), fields.reachOf(j)))
      .map((j) => [i, j]),
  );
  return partsOf(moving, pairs);
}
