import type { Nm } from "../../measure/index.js";
import { isCorner, type Wall } from "../../model/index.js";
import { isTold } from "../corner-lays.js";
import { BondEnd, bondMiss, gapBetween } from "./bond-miss.js";
import { ROOM_LOOKS, ROOM_MOST } from "./budget.js";
import { type Carried, carriedStarts } from "./carried-starts.js";
import type { WallAt, WallStanding } from "./wall-at.js";
import type { AcrossWay } from "./ways-across.js";
import type { Wanting } from "./wanting.js";

/** A corner at which the bond is wanted to go on, between two walls of a list, and the wish's place. */
export interface BondLink {
  readonly a: number;
  readonly b: number;
  /** The end of `a` that is there. */
  readonly end: "left" | "right";
  readonly place: number;
  /** Whether what a plan says of a bond that goes on speaks of these two. */
  readonly isSayable: boolean;
}

/** A wall's tiles with one start. */
export interface Standing extends WallStanding {
  readonly ends: Readonly<Record<"left" | "right", BondEnd>>;
}

/** How a wall may go on at a corner from the other one's start. */
export interface Beside {
  /** The starts with which it goes on, as they are worked out from that one. */
  readonly carried: readonly Carried[];
  /** The places of all starts with which nothing is missed. */
  readonly missless: ReadonlySet<Nm>;
}

/**
 * The starts across of walls at one joint whose bond is wanted to go on, and what they miss beside each other with courses at
 * these heights: each wall's own critical ones, and what is critical for others as it comes to it round the corners.
 */
export class BondTables {
  readonly starts: readonly (readonly AcrossWay[])[];
  /** Whether some starts were left out. */
  isThinned = false;
  private readonly standings: readonly Map<Nm, Standing>[];
  private readonly sides: readonly Readonly<Record<"a" | "b", SideTable>>[];
  private readonly ways: readonly Map<Nm, AcrossWay | null>[];
  private readonly gaps = new Map<BondLink, Nm>();

  constructor(
    private readonly wanting: Wanting,
    private readonly walls: readonly WallAt[],
    private readonly bonds: readonly BondLink[],
    private readonly heights: readonly Nm[],
  ) {
    this.standings = walls.map(() => new Map<Nm, Standing>());
    this.sides = bonds.map(() => ({ a: emptyTable(), b: emptyTable() }));
    this.starts = this.spread();
    this.ways = this.starts.map((ways) => new Map(ways.map((way) => [way.x, way])));
  }

  /** A wall's start at a place; null where another one is stated. */
  way(i: number, x: Nm): AcrossWay | null {
    const known = this.ways[i]!.get(x);
    if (known !== undefined) return known;
    const way = this.walls[i]!.startAt(x);
    this.ways[i]!.set(x, way);
    return way;
  }

  /** How a wall may go on at a corner from a start of the other one. */
  beside(bond: BondLink, i: number, from: AcrossWay): Beside {
    const table = this.sideOf(bond, i);
    const known = table.beside.get(from.x);
    if (known) return known;
    const standing = this.standing(otherOf(bond, i), from);
    const carried = this.carried(bond, i, from);
    const xs = [...this.starts[i]!.map(({ x }) => x), ...carried.map(({ x }) => x)];
    const missless = xs.filter((x) => this.missed(bond, i, this.standingAt(i, x), standing) === 0);
    const found = { carried, missless: new Set(missless) };
    table.beside.set(from.x, found);
    return found;
  }

  /** What is known of a wall beside the other one of a corner. */
  private sideOf(bond: BondLink, i: number): SideTable {
    return this.sides[this.bonds.indexOf(bond)]![bond.a === i ? "a" : "b"];
  }

  /** What is missed at a corner by a wall's start beside the other's, nm. */
  missed(bond: BondLink, i: number, standing: Standing, from: Standing): Nm {
    this.walls[i]!.spend(ROOM_LOOKS.corner);
    const own = standing.ends[sideAt(bond, i)];
    const its = from.ends[sideAt(bond, otherOf(bond, i))];
    const gap = this.gaps.get(bond) ?? gapBetween(this.wanting.plan, own, its);
    this.gaps.set(bond, gap);
    return isOver(this.walls, bond, i) ? bondMiss(own, its, gap) : bondMiss(its, own, gap);
  }

  standing(i: number, { x }: AcrossWay): Standing {
    return this.standingAt(i, x);
  }

  private standingAt(i: number, x: Nm): Standing {
    const known = this.standings[i]!.get(x);
    if (known) return known;
    const laid = this.walls[i]!.standing(this.heights[i]!, x);
    const ends = { left: new BondEnd(laid, "left"), right: new BondEnd(laid, "right") };
    const standing = { ...laid, ends };
    this.standings[i]!.set(x, standing);
    return standing;
  }

  /** The starts with which a wall goes on from one of the other's at a corner. */
  private carried(bond: BondLink, i: number, from: AcrossWay): readonly Carried[] {
    const { carried } = this.sideOf(bond, i);
    const known = carried.get(from.x);
    if (known) return known;
    const found = this.carry(bond, i, this.standing(otherOf(bond, i), from));
    carried.set(from.x, found);
    return found;
  }

  private carry(bond: BondLink, i: number, from: Standing): Carried[] {
    const wall = this.walls[i]!;
    const to = this.standing(i, wall.starts[0]!).ends[sideAt(bond, i)];
    const ends = from.ends[sideAt(bond, otherOf(bond, i))];
    const corners = new Set(
      this.bonds.filter((each) => each.a === bond.a && each.b === bond.b).map(({ end }) => end),
    );
    const isTold = isOver(this.walls, bond, i);
    const isOnly = bond.isSayable && corners.size === 1;
    return carriedStarts(this.wanting.plan, to, wall.lay, ends, isTold, isOnly).map((carried) => ({
      ...carried,
      x: wall.startAcross(carried.x),
    }));
  }

  /** Each wall's starts, with those that are critical for others as they come to it round up to all corners. */
  private spread(): AcrossWay[][] {
    const all = this.walls.map(({ starts }) => new Map(starts.map((way) => [way.x, way])));
    let last = this.walls.map(({ starts }) => starts);
    for (let round = 1; round < this.walls.length; round++) {
      const next = this.walls.map((): AcrossWay[] => []);
      for (const bond of this.bonds) {
        for (const i of [bond.a, bond.b]) {
          for (const x of this.comingFrom(bond, i, last[otherOf(bond, i)]!)) {
            if (all[i]!.has(x)) continue;
            if (all[i]!.size >= ROOM_MOST.carried) {
              this.isThinned = true;
              break;
            }
            const start = this.walls[i]!.startAt(x);
            if (!start) continue;
            all[i]!.set(x, start);
            next[i]!.push(start);
          }
        }
      }
      last = next;
    }
    return all.map((ways) => [...ways.values()]);
  }

  /** The starts that the other wall's come to at a corner, worked out as they are asked for. */
  private *comingFrom(bond: BondLink, i: number, ways: readonly AcrossWay[]): Generator<Nm> {
    for (const way of ways) for (const { x } of this.carried(bond, i, way)) yield x;
  }
}

/** What is known of a wall beside the other one of a corner, by that one's start. */
interface SideTable {
  readonly carried: Map<Nm, readonly Carried[]>;
  readonly beside: Map<Nm, Beside>;
}

function emptyTable(): SideTable {
  return { carried: new Map(), beside: new Map() };
}

/** The other wall of a corner. */
export function otherOf({ a, b }: BondLink, i: number): number {
  return a === i ? b : a;
}

/** A wall's end at a corner. */
function sideAt({ a, end }: BondLink, i: number): "left" | "right" {
  return (a === i) === (end === "left") ? "left" : "right";
}

/** Whether a corner is told of this wall. */
function isOver(walls: readonly { readonly wall: Wall }[], bond: BondLink, i: number): boolean {
  const side = sideAt(bond, i);
  const { meets } = walls[i]!.wall.edges[side];
  return isCorner(meets) && isTold(meets, side);
}
