import type { Nm } from "../../measure/index.js";
import type { Lay, Opening, Wall } from "../../model/index.js";
import { type Box, overlaps } from "../box.js";
import { imbalanceAcross } from "../choose/balance.js";
import { thinned } from "../choose/budget.js";
import type { Effort } from "../choose/effort.js";
import { type Field, fieldOf, withLimits } from "../choose/field.js";
import { latticeOf } from "../lattice.js";
import { regionOf } from "../region.js";
import type { Lattice, Region } from "../solved.js";
import { ROOM_LOOKS, ROOM_MOST, shareOf } from "./budget.js";
import { centreMiss, isEdgeIn, openingMiss, sideMiss } from "./misses.js";
import { isFree, type Settled, settle, settledOf } from "./settle.js";
import { limitsUnder, type RankedWish, type Wanting, wishesOf } from "./wanting.js";

/** The fields of a wall. */
export interface Fields {
  readonly wall: Wall;
  readonly own: Field;
  /** For each wish for no small cut, a field whose slivers are those cuts. */
  readonly under: readonly { readonly place: number; readonly field: Field }[];
}

/** A wall's fields without the openings that may move, at a height to stop at. */
export interface Base {
  readonly fields: Fields;
  /** The same for bounds: all that those openings may take counts for no cut. */
  readonly loose: Fields;
}

/** A wish, and the number of the opening that it is for; null where it is for none. */
interface Spoken {
  readonly wish: RankedWish;
  readonly opening: number | null;
}

/** A search that has only a part of the effort looks at so many places, heights or starts all the same. */
const FEWEST = 64;

/** A wall's fields at one joint, wherever its openings and its top come to stand, and what its wishes miss. */
export class WallFields {
  readonly drawn: Settled;
  /** The wall as it is drawn. */
  readonly first: Fields;
  /** Openings that may move, by their numbers. */
  readonly free: Readonly<Record<"x" | "y", readonly number[]>>;
  /** Those that may move in any direction. */
  readonly moving: readonly number[];
  readonly isFree: boolean;
  /** Those that move in a direction in which something is wished of them. */
  readonly wished: Readonly<Record<"x" | "y", readonly number[]>>;
  /** Whether some ways were left out. */
  isThinned = false;
  private readonly bases = new Map<Nm, Base>();
  /** What all openings take where they are drawn, whether the lay is round them or not. */
  private knownTaken: Region<Opening>["takeaways"] | null = null;
  private readonly under: readonly RankedWish[];
  /** The ranks of the wishes for few cuts. */
  readonly cutPlaces: readonly number[];
  private readonly wishes: Readonly<Record<"across" | "up", readonly Spoken[]>>;

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
    this.under = kinds("no-cut");
    this.cutPlaces = kinds("few-cuts").map(({ place }) => place);
    const numbers = wall.openings.map((_, i) => i);
    const isFreeIn = (i: number, direction: "x" | "y") =>
      wall.openings[i]!.free[direction] !== null;
    this.free = {
      x: numbers.filter((i) => isFreeIn(i, "x")),
      y: numbers.filter((i) => isFreeIn(i, "y")),
    };
    this.moving = numbers.filter((i) => isFreeIn(i, "x") || isFreeIn(i, "y"));
    this.isFree = isFree(wall);
    this.drawn = settledOf(wall);
    this.first = this.fieldsOf(wall);
    const spoken = (wishes: readonly RankedWish[]): readonly Spoken[] =>
      wishes
        .map((wish) => ({ wish, opening: this.openingOf(wish) }))
        .filter(({ opening }) => this.isRound(opening));
    this.wishes = {
      across: spoken(kinds("centre", "equal-ends")),
      up: spoken(kinds("whole-at-opening", "whole-at-side")),
    };
    this.wished = {
      x: this.free.x.filter((i) => this.isWanted(i, "across")),
      y: this.free.y.filter((i) => this.isWanted(i, "up")),
    };
  }

  /** Whether the lay is round an opening: of a wall's lays only those have a tile or a joint there. */
  private isRound(i: number | null): boolean {
    if (i === null || this.moving.includes(i)) return true;
    const { takeaways } = this.first.own.region;
    return takeaways.some(({ opening }) => opening === this.wall.openings[i]);
  }

  /** At most the wall's share of some heights, evenly taken. */
  someHeights<Height>(heights: readonly Height[]): readonly Height[] {
    return this.some(heights, shareOf(ROOM_MOST.heights, this.sharers));
  }

  /** At most so many of some places or ways, evenly taken; a search with a part of the effort takes that part of them. */
  some<Each>(all: readonly Each[], most: number): readonly Each[] {
    const part = Math.floor(most * (this.effort.share ?? 1));
    const taken = Math.min(most, Math.max(FEWEST, part));
    if (all.length > taken) this.isThinned = true;
    return thinned(all, taken);
  }

  /** Whether no more may be looked for: one is enough to go on with, and the rest is left out. */
  isSpent(found: number): boolean {
    if (found === 0 || this.effort.cells <= ROOM_MOST.cells) return false;
    this.isThinned = true;
    return true;
  }

  /** The wall with all that is free where it comes to stand. */
  at(settled: Settled): Fields {
    return this.isFree ? this.fieldsOf(settle(this.wall, settled)) : this.first;
  }

  /** The wall without what may move. */
  base(stop: Nm): Base {
    const known = this.bases.get(stop);
    if (known) return known;
    const base = this.baseAt(stop);
    this.bases.set(stop, base);
    return base;
  }

  private baseAt(stop: Nm): Base {
    const { wall, moving, first } = this;
    if (!this.isFree) return { fields: first, loose: first };
    const openings = wall.openings.filter((_, i) => !moving.includes(i));
    const fields = this.fieldsOf({ ...wall, size: { ...wall.size, up: stop }, openings });
    const plain = moving.filter((i) => this.isPlain(i, fields.own));
    // Where all tiles round it are whole an opening can only make more cuts.
    const reaches = moving.filter((i) => !plain.includes(i)).map((i) => this.reachOf(i));
    const loosen = (field: Field): Field => ({
      ...field,
      obstacles: [...field.obstacles, ...reaches],
    });
    const under = fields.under.map(({ place, field }) => ({ place, field: loosen(field) }));
    return { fields, loose: { ...fields, own: loosen(fields.own), under } };
  }

  private fieldsOf(wall: Wall): Fields {
    const { plan, tiledAt } = this.wanting;
    const { joint } = this;
    const own = fieldOf(plan, wall, wall.lays[0]!, joint, tiledAt(wall, joint));
    const under = this.under.map(({ wish: { wanted }, place }) => {
      const limits = limitsUnder(plan.limits, wanted.kind === "no-cut" ? wanted.under : 0);
      return { place, field: withLimits(own, limits) };
    });
    this.effort.cells += ROOM_LOOKS.field;
    return { wall, own, under };
  }

  /** What an opening takes where it is drawn. */
  boxOf(i: number): Box {
    this.knownTaken ??= regionOf(this.wanting.plan, this.wall, this.joint).takeaways;
    return this.knownTaken[i]!.box;
  }

  /** What an opening takes at a place. */
  boxAt(i: number, at: Opening["at"]): Box {
    const { left, right, bottom, top } = this.boxOf(i);
    const drawn = this.wall.openings[i]!.at;
    const [x, y] = [at.x - drawn.x, at.y - drawn.y];
    return { left: left + x, right: right + x, bottom: bottom + y, top: top + y };
  }

  /** All that an opening may take. */
  reachOf(i: number): Box {
    const { at, free } = this.wall.openings[i]!;
    const least = this.boxAt(i, { x: free.x?.min ?? at.x, y: free.y?.min ?? at.y });
    const most = this.boxAt(i, { x: free.x?.max ?? at.x, y: free.y?.max ?? at.y });
    return { left: least.left, bottom: least.bottom, right: most.right, top: most.top };
  }

  /** Whether a tile or a joint is wanted in the middle of an opening. */
  isCentred(i: number): boolean {
    return this.wishes.across.some(({ opening }) => opening === i);
  }

  /** Whether something is wished of an opening in a direction. */
  isWanted(i: number, direction: "across" | "up"): boolean {
    return this.wishes[direction].some(({ opening }) => opening === i);
  }

  /** All tiles that an opening may meet. */
  tilesRound(i: number): Box {
    const { left, bottom, right, top } = this.reachOf(i);
    const { across, up } = this.first.own;
    return {
      left: left - across.module,
      bottom: bottom - up.module,
      right: right + across.module,
      top: top + up.module,
    };
  }

  /**
   * What cuts the tiles that an opening may meet in a direction, but for itself: nothing, straight ends of the
   * wall, or what can't be told so easily. `base` is the wall without what may move.
   */
  roundOf(i: number, direction: "x" | "y", base: Field): "nothing" | "ends" | "other" {
    const box = this.tilesRound(i);
    const others = this.moving.filter((j) => j !== i).map((j) => this.reachOf(j));
    if ([...base.obstacles, ...others].some((other) => overlaps(box, other))) return "other";
    const { across, up } = base;
    const isWithin =
      direction === "x"
        ? box.left >= across.clearLow && box.right <= across.clearHigh
        : box.bottom >= up.clearLow && box.top <= up.clearHigh;
    if (isWithin) return "nothing";
    return (direction === "x" ? across : up).slopes.length === 0 ? "ends" : "other";
  }

  /** Whether all tiles that an opening may meet are whole, but for itself. */
  isPlain(i: number, base: Field): boolean {
    return (["x", "y"] as const).every((axis) => this.roundOf(i, axis, base) === "nothing");
  }

  /** What the wishes for one direction miss, by their ranks, but for those of openings that move in it. */
  addMissed(
    missed: Map<number, number>,
    direction: "across" | "up",
    own: Field,
    at: { readonly x: Nm; readonly y: Nm },
  ): void {
    const lattice = latticeOf(this.lay, this.joint, at.x, at.y);
    const free = this.free[direction === "across" ? "x" : "y"];
    for (const spoken of this.wishes[direction]) {
      const { wish, opening } = spoken;
      if (opening !== null && free.includes(opening)) continue;
      const place = opening === null ? null : this.drawn.places[opening]!;
      missed.set(wish.place, this.missedBy(spoken, own, lattice, place));
    }
  }

  /** What the wishes for an opening that moves in a direction miss with it at a place. */
  missesOf(
    i: number,
    direction: "across" | "up",
    lattice: Lattice,
    place: Nm,
  ): { readonly place: number; readonly missed: number }[] {
    const drawn = this.drawn.places[i]!;
    const at = direction === "across" ? { ...drawn, x: place } : { ...drawn, y: place };
    return this.wishes[direction]
      .filter(({ opening }) => opening === i)
      .map((spoken) => ({
        place: spoken.wish.place,
        missed: this.missedBy(spoken, this.first.own, lattice, at),
      }));
  }

  /** The number of the opening that a wish is for. */
  private openingOf({ wish: { wanted } }: RankedWish): number | null {
    const of =
      wanted.kind === "centre" ? wanted.on : wanted.kind === "whole-at-opening" ? wanted.of : null;
    return of && this.wall.openings.findIndex(({ name }) => name === of.opening);
  }

  /** `at`: the place of the opening that the wish is for, where it is for one. */
  private missedBy(
    { wish, opening: i }: Spoken,
    own: Field,
    lattice: Lattice,
    at: Opening["at"] | null,
  ): number {
    const { wanted } = wish.wish;
    switch (wanted.kind) {
      case "centre":
        return centreMiss(lattice, { ...this.wall.openings[i!]!, at: at! });
      case "equal-ends":
        return imbalanceAcross(own.balance, lattice.x);
      case "whole-at-opening": {
        const box = this.boxAt(i!, at!);
        return isEdgeIn(own.region, box, wanted.at) ? openingMiss(lattice, box, wanted.at) : 0;
      }
      case "whole-at-side":
        return sideMiss(lattice, own.region, wanted.at);
      default:
        return 0;
    }
  }
}

/** Whether what an opening takes stays inside the tile and apart from what is there already. */
export function isApart(box: Box, { region, obstacles }: Field, others: readonly Box[]): boolean {
  const { bounds } = region;
  const isIn =
    box.left >= bounds.left &&
    box.right <= bounds.right &&
    box.bottom >= bounds.bottom &&
    box.top <= bounds.top;
  return (
    isIn &&
    !obstacles.some((other) => overlaps(box, other)) &&
    !others.some((other) => overlaps(box, other))
  );
}
