import type { Nm } from "../../measure/index.js";
import type { Lay, Opening, Wall } from "../../model/index.js";
import type { Box } from "../box.js";
import { imbalanceAcross } from "../choose/balance.js";
import { thinned } from "../choose/budget.js";
import type { Effort } from "../choose/effort.js";
import { type Field, fieldOf } from "../choose/field.js";
import { overlaps } from "../box.js";
import { latticeOf } from "../lattice.js";
import { ROOM_LOOKS, ROOM_MOST, shareOf } from "./budget.js";
import type { Lattice } from "../solved.js";
import { centreMiss, openingMiss, sideMiss } from "./misses.js";
import { isFree, type Settled, settle, settledOf } from "./settle.js";
import { limitsUnder, type RankedWish, type Wanting, wishesOf } from "./wanting.js";

/** The fields of a wall with all that is free settled. */
export interface Fields {
  readonly wall: Wall;
  readonly own: Field;
  /** For each wish for no small cut, a field whose slivers are those cuts. */
  readonly under: readonly { readonly place: number; readonly field: Field }[];
}

const MOST_KEPT = 2_000;

/** A wall's fields at one joint, wherever its openings and its top come to stand, and what its wishes miss. */
export class WallFields {
  readonly drawn: Settled;
  /** The wall as it is drawn. */
  readonly first: Fields;
  /** Openings that may move, by their numbers. */
  readonly free: Readonly<Record<"x" | "y", readonly number[]>>;
  readonly isFree: boolean;
  /** Whether some ways were left out. */
  isThinned = false;
  private readonly known = new Map<string, Fields>();
  private readonly wishes: Readonly<Record<"across" | "up" | "under" | "cuts", RankedWish[]>>;

  constructor(
    readonly wanting: Wanting,
    readonly wall: Wall,
    readonly lay: Lay,
    readonly joint: Nm,
    readonly effort: Effort,
    /** How many walls share the effort. */
    private readonly sharers: number,
  ) {
    const kinds = (...kind: Parameters<typeof wishesOf>[2]) => wishesOf(wanting, wall.name, kind);
    this.wishes = {
      across: kinds("centre", "equal-ends"),
      up: kinds("whole-at-opening", "whole-at-side"),
      under: kinds("no-cut"),
      cuts: kinds("few-cuts"),
    };
    const numbers = wall.openings.map((_, i) => i);
    this.free = {
      x: numbers.filter((i) => wall.openings[i]!.free.x),
      y: numbers.filter((i) => wall.openings[i]!.free.y),
    };
    this.isFree = isFree(wall);
    this.drawn = settledOf(wall);
    this.first = this.at(this.drawn);
  }

  /** At most its share of some ways of the wall, evenly taken. */
  someWays<Way>(ways: readonly Way[]): readonly Way[] {
    return this.some(ways, shareOf(ROOM_MOST.ways, this.sharers));
  }

  /** The first of some ways, its share of them. */
  bestWays<Way>(ways: readonly Way[]): readonly Way[] {
    const most = shareOf(ROOM_MOST.ways, this.sharers);
    if (ways.length > most) this.isThinned = true;
    return ways.slice(0, most);
  }

  someHeights(heights: readonly Nm[]): readonly Nm[] {
    return this.some(heights, shareOf(ROOM_MOST.heights, this.sharers));
  }

  somePlaces(places: readonly Nm[]): readonly Nm[] {
    return this.some(places, ROOM_MOST.places);
  }

  private some<Each>(all: readonly Each[], most: number): readonly Each[] {
    if (all.length > most) this.isThinned = true;
    return thinned(all, most);
  }

  /** Whether no more ways may be looked for: one is enough to go on with, and the rest is left out. */
  isSpent(found: number): boolean {
    if (found === 0 || this.effort.cells <= ROOM_MOST.cells) return false;
    this.isThinned = true;
    return true;
  }

  /** The ranks of the wishes for few cuts. */
  get cutPlaces(): readonly number[] {
    return this.wishes.cuts.map(({ place }) => place);
  }

  at(settled: Settled): Fields {
    // Where nothing is free there is nothing to settle.
    if (!this.isFree && this.known.size > 0) return this.first;
    const key = `${settled.stop} ${settled.places.map(({ x, y }) => `${x},${y}`).join(" ")}`;
    const known = this.known.get(key);
    if (known) return known;
    const { plan } = this.wanting;
    const wall = this.isFree ? settle(this.wall, settled) : this.wall;
    const lay = this.isFree ? wall.lays[0]! : this.lay;
    const under = this.wishes.under.map(({ wish: { wanted }, place }) => {
      const limits = limitsUnder(plan.limits, wanted.kind === "no-cut" ? wanted.under : 0);
      return { place, field: fieldOf({ ...plan, limits }, wall, lay, this.joint) };
    });
    const fields = { wall, own: fieldOf(plan, wall, lay, this.joint), under };
    this.effort.cells += ROOM_LOOKS.field * (1 + under.length);
    // A wall with long ranges has more places than are worth keeping.
    if (this.known.size < MOST_KEPT) this.known.set(key, fields);
    return fields;
  }

  /** The wall as drawn but for the places of what is free in a direction, and its height. */
  moved(direction: "x" | "y", places: readonly Nm[], stop = this.drawn.stop): Settled {
    const numbers = this.free[direction];
    const all = this.drawn.places.map((at, i) =>
      numbers.includes(i) ? { ...at, [direction]: places[numbers.indexOf(i)]! } : at,
    );
    return { stop, places: all };
  }

  /** The fields for bounds: an opening that may move counts for all that it may take, and for no cut. */
  loose(fields: Fields): Fields {
    if (!this.isFree) return fields;
    const { openings } = this.wall;
    const loosen = (field: Field): Field => {
      const boxes = field.boxes.filter((_, i) => !isMoving(openings[i]!));
      const reaches = field.boxes
        .map((box, i) => reachOf(box, openings[i]!, fields.wall.openings[i]!))
        .filter((_, i) => isMoving(openings[i]!));
      return { ...field, boxes, obstacles: [...boxes, ...reaches, ...field.circles] };
    };
    const under = fields.under.map(({ place, field }) => ({ place, field: loosen(field) }));
    return { ...fields, own: loosen(fields.own), under };
  }

  /** What the wishes for one direction miss, by their ranks. */
  addMissed(
    missed: Map<number, number>,
    direction: "across" | "up",
    { wall, own }: Fields,
    at: { readonly x: Nm; readonly y: Nm },
  ): void {
    const lattice = latticeOf(this.lay, this.joint, at.x, at.y);
    for (const { wish, place } of this.wishes[direction]) {
      missed.set(place, missedBy(wish.wanted, wall, own, lattice));
    }
  }
}

/** Whether what openings take stays inside the tile and apart from one another and from holes. */
export function isApart({ region }: Field): boolean {
  const { bounds, takeaways, roundHoles } = region;
  const boxes = takeaways.map(({ box }) => box);
  const holes = [...roundHoles.map(({ box }) => box), ...region.steps];
  return boxes.every((box, i) => {
    const others = [...boxes.slice(i + 1), ...holes];
    const isIn =
      takeaways[i]!.opening.reaches !== null ||
      !isMoving(takeaways[i]!.opening) ||
      (box.left >= bounds.left &&
        box.right <= bounds.right &&
        box.bottom >= bounds.bottom &&
        box.top <= bounds.top);
    return isIn && !others.some((other) => overlaps(box, other));
  });
}

function missedBy(
  wanted: RankedWish["wish"]["wanted"],
  wall: Wall,
  { region, balance }: Field,
  lattice: Lattice,
): number {
  switch (wanted.kind) {
    case "centre":
      return centreMiss(
        lattice,
        wall.openings.find(({ name }) => name === wanted.on.opening)!,
      );
    case "equal-ends":
      return imbalanceAcross(balance, lattice.x);
    case "whole-at-opening": {
      const taken = region.takeaways.find(({ opening }) => opening.name === wanted.of.opening)!;
      return openingMiss(lattice, taken.box, wanted.at);
    }
    case "whole-at-side":
      return sideMiss(lattice, region, wanted.at);
    default:
      return 0;
  }
}

function isMoving({ free }: Pick<Opening, "free">): boolean {
  return free.x !== null || free.y !== null;
}

/** All that an opening may take, from what it takes at its place. */
function reachOf(box: Box, { free }: Opening, { at }: Opening): Box {
  const x = free.x ?? { min: at.x, max: at.x };
  const y = free.y ?? { min: at.y, max: at.y };
  return {
    left: box.left - at.x + x.min,
    right: box.right - at.x + x.max,
    bottom: box.bottom - at.y + y.min,
    top: box.top - at.y + y.max,
  };
}
