import type { Nm } from "../../measure/index.js";
import type { CarriedStart } from "../../model/index.js";
import { startOrder } from "../start-order.js";
import { type BondLink, type BondTables, type Beside, otherOf } from "./bond-tables.js";
import type { Carried } from "./carried-starts.js";
import { ROOM_LOOKS } from "./budget.js";
import { compareCosts, type Cost, isUnder, lessBy, sumOf } from "./cost.js";
import type { WallAt, WallFound } from "./wall-at.js";
import type { AcrossWay } from "./ways-across.js";
import { costAt, noCost, type Wanting } from "./wanting.js";

/** Walls laid together. */
export interface BondedFound {
  readonly cost: Cost;
  readonly walls: readonly WallFound[];
}

/** A wall laid with one start. */
interface Taken {
  readonly way: AcrossWay;
  readonly found: WallFound;
}

/** A corner with a wall that is laid. */
interface Neighbour extends Beside {
  readonly bond: BondLink;
  readonly from: Taken;
}

/** A start that may be taken next, and what it costs at least with what it misses beside the walls that are laid. */
interface Candidate {
  readonly way: AcrossWay;
  readonly missed: Cost;
  readonly least: Cost;
  readonly carried: CarriedStart | null;
}

/** What a wall costs with one start, if that is known: at least `over` where only so much is. */
type Weighed = { readonly found: WallFound } | { readonly over: Cost };

/**
 * Finds the best starts across of walls whose bond is wanted to go on round their corners, their courses standing at these
 * heights. Each wall is tried at what is critical for itself, at what is for the others as it comes round the corners to it,
 * and as it goes on from the walls that are laid before it.
 */
export class BondedWalls {
  private readonly order: readonly number[];
  private readonly rests: readonly Cost[];
  private readonly weighed = new Map<string, Weighed>();
  private readonly tried = new Map<string, Cost>();
  private best: BondedFound | null = null;

  constructor(
    private readonly wanting: Wanting,
    private readonly walls: readonly WallAt[],
    private readonly bonds: readonly BondLink[],
    private readonly heights: readonly Nm[],
    private readonly tables: BondTables,
    private bar: Cost | null,
  ) {
    const all = walls.map(({ wall }) => wall);
    this.order = startOrder(all).map((wall) => all.indexOf(wall));
    const least = this.order.map((i) => walls[i]!.leastAt(heights[i]!));
    this.rests = least.map((_, k) => least.slice(k + 1).reduce(sumOf, noCost(wanting)));
  }

  /** The best that costs less than the bar; null when there is none. `besides` is what the heights alone miss. */
  search(besides: Cost): BondedFound | null {
    this.go(0, new Map(), besides);
    return this.best;
  }

  /** Takes a start for one wall after another, the most promising first. */
  private go(k: number, taken: ReadonlyMap<number, Taken>, cost: Cost): void {
    const i = this.order[k];
    if (i === undefined) {
      this.best = { cost, walls: this.walls.map((_, each) => taken.get(each)!.found) };
      this.bar = cost;
      return;
    }
    if (this.isBehind(k, taken, cost)) return;
    const before = sumOf(cost, this.rests[k]!);
    for (const candidate of this.candidates(i, taken, before)) {
      const { missed, least, way } = candidate;
      if (this.isOver(before, least)) return;
      if (this.bar && this.walls[i]!.isSpent()) return;
      const most = this.bar && lessBy(lessBy(this.bar, before), missed);
      const found = this.weigh(i, candidate, most);
      if (!found || this.isOver(before, sumOf(missed, found.cost))) continue;
      const next = new Map(taken).set(i, { found, way });
      this.go(k + 1, next, sumOf(sumOf(cost, missed), found.cost));
    }
  }

  /** Whether the walls that are left have been tried beside the same starts already, for no more. */
  private isBehind(k: number, taken: ReadonlyMap<number, Taken>, cost: Cost): boolean {
    const left = this.order.slice(k);
    const beside = this.order
      .slice(0, k)
      .filter((i) => this.bondsOf(i).some((bond) => left.includes(otherOf(bond, i))))
      .map((i) => `${i} ${taken.get(i)!.way.x}`);
    const key = `${k}: ${beside.join()}`;
    const known = this.tried.get(key);
    if (known && compareCosts(known, cost) <= 0) return true;
    this.tried.set(key, cost);
    return false;
  }

  private weigh(i: number, { way, carried }: Candidate, most: Cost | null): WallFound | null {
    const key = `${i} ${way.x}`;
    const known = this.weighed.get(key);
    const isKnownOver = (over: Cost) => most !== null && compareCosts(over, most) >= 0;
    if (known && "over" in known && isKnownOver(known.over)) return null;
    const found =
      known && "found" in known
        ? known.found
        : this.walls[i]!.bestFrom(this.heights[i]!, way, most);
    if (found) this.weighed.set(key, { found });
    else if (most) this.weighed.set(key, { over: most });
    const isSayable = carried && this.tables.standing(i, way).isLowest;
    const settled = isSayable ? { ...carried, x: way.x } : null;
    return found && { ...found, carried: settled };
  }

  private isOver(before: Cost, least: Cost): boolean {
    return this.bar !== null && !isUnder(before, least, this.bar);
  }

  /** The starts of a wall beside those that are laid, the least first; of equals, its own before those that are carried. */
  private candidates(i: number, taken: ReadonlyMap<number, Taken>, before: Cost): Candidate[] {
    const wall = this.walls[i]!;
    const besides = wall.leastMoving ?? noCost(this.wanting);
    const level = sumOf(wall.leastOfHeight(this.heights[i]!), besides);
    const corners = this.bondsOf(i).flatMap((bond): Neighbour[] => {
      const from = taken.get(otherOf(bond, i));
      return from ? [{ bond, from, ...this.tables.beside(bond, i, from.way) }] : [];
    });
    const carried = corners.flatMap((corner) => corner.carried);
    const saidAt = new Map(carried.flatMap(({ x, said }) => (said ? [[x, said] as const] : [])));
    const least = sumOf(level, wall.leastAcross);
    const ways = this.mayMiss(corners, before, least)
      ? this.waysOf(i, carried)
      : this.misslessOf(i, corners);
    wall.spend(ROOM_LOOKS.start * ways.length);
    const stated = this.statedFrom(i, taken);
    const found = (stated ? ways.filter(({ x }) => isSaid(saidAt.get(x), stated)) : ways).flatMap(
      (way): Candidate[] => {
        const alone = sumOf(way.least, level);
        if (this.isOver(before, alone)) return [];
        const missed = this.missed(i, way, corners);
        const all = sumOf(alone, missed);
        if (this.isOver(before, all)) return [];
        return [{ way, missed, least: all, carried: saidAt.get(way.x) ?? null }];
      },
    );
    return found.sort((a, b) => compareCosts(a.least, b.least));
  }

  /** Whether a start that misses a nanometre at a corner may be better than the best. */
  private mayMiss(corners: readonly Neighbour[], before: Cost, least: Cost): boolean {
    const place = Math.max(0, ...corners.map(({ bond }) => bond.place));
    if (place === 0) return true;
    return !this.isOver(before, sumOf(least, costAt(this.wanting, place, 1)));
  }

  /** A wall's starts, and those with which it goes on from others. */
  private waysOf(i: number, carried: readonly Carried[]): readonly AcrossWay[] {
    const own = this.tables.starts[i]!;
    const xs = new Set([...own.map(({ x }) => x), ...carried.map(({ x }) => x)]);
    return [...xs].flatMap((x) => this.tables.way(i, x) ?? []);
  }

  /** Those with which nothing is missed at any of these corners. */
  private misslessOf(i: number, [first, ...others]: readonly Neighbour[]): readonly AcrossWay[] {
    const xs = [...(first?.missless ?? [])].filter((x) => others.every((at) => at.missless.has(x)));
    return xs.flatMap((x) => this.tables.way(i, x) ?? []);
  }

  /** What a start misses beside the walls that are laid. */
  private missed(i: number, way: AcrossWay, corners: readonly Neighbour[]): Cost {
    return corners.reduce<Cost>((cost, { bond, from, missless }) => {
      if (missless.has(way.x)) return cost;
      const { tables } = this;
      const standing = tables.standing(i, way);
      const its = tables.standing(otherOf(bond, i), from.way);
      const missed = tables.missed(bond, i, standing, its);
      return sumOf(cost, costAt(this.wanting, bond.place, missed));
    }, noCost(this.wanting));
  }

  /** The start that a plan states for a wall, where it goes on from one that is laid. */
  private statedFrom(i: number, taken: ReadonlyMap<number, Taken>): CarriedStart | null {
    const { across } = this.walls[i]!.lay;
    if (!across || !("wall" in across)) return null;
    const meets = this.bondsOf(i)
      .filter(({ isSayable }) => isSayable)
      .map((bond) => otherOf(bond, i))
      .some((other) => taken.has(other) && this.walls[other]!.wall.name === across.wall);
    return meets ? across : null;
  }

  private bondsOf(i: number): BondLink[] {
    return this.bonds.filter(({ a, b }) => a === i || b === i);
  }
}

function isSaid(said: CarriedStart | undefined, stated: CarriedStart): boolean {
  return (
    said?.kind === stated.kind &&
    said.wall === stated.wall &&
    said.corner === stated.corner &&
    jointOf(said) === jointOf(stated)
  );
}

/** Where the corner's joint comes from; null where the bond is mirrored. */
function jointOf(start: CarriedStart): "added" | "swallowed" | null {
  return start.kind === "wrapped" ? start.joint : null;
}
