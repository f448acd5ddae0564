import type { Nm } from "../../measure/index.js";
import { type BondLink, BondTables } from "./bond-tables.js";
import { BondedWalls } from "./bonded-walls.js";
import { ROOM_LOOKS } from "./budget.js";
import { compareCosts, type Cost, isUnder, lessBy, lesserOf, sumOf } from "./cost.js";
import { heightsMeeting } from "./course-heights.js";
import { coursesMiss } from "./misses.js";
import type { WallAt, WallFound } from "./wall-at.js";
import { costAt, noCost, type Wanting } from "./wanting.js";

/** A corner at which courses are wanted to meet, or the bond to go on, between two walls of a list, and the wish's place. */
export interface Link extends BondLink {
  readonly wanted: "courses-meet" | "bond-goes-on";
}

/** Walls laid together. */
export interface LinkedFound {
  readonly cost: Cost;
  readonly walls: readonly WallFound[];
}

/** Finds the best heights for walls that corners link, each at its joint. */
export class LinkedWalls {
  weighed = 0;
  /** Whether some starts that come round corners were left out. */
  isThinned = false;
  private best: LinkedFound | null = null;
  private heights: readonly (readonly Nm[])[] = [];
  private knownLeast: readonly Cost[] | null = null;
  private readonly bonds: readonly Link[];
  private readonly tables = new Map<string, BondTables>();

  constructor(
    private readonly wanting: Wanting,
    private readonly walls: readonly WallAt[],
    private readonly links: readonly Link[],
  ) {
    this.bonds = links.filter(({ wanted }) => wanted === "bond-goes-on");
  }

  /** What each wall costs at least by itself. */
  private get least(): readonly Cost[] {
    return (this.knownLeast ??= this.walls.map(({ least }) => least));
  }

  /** What the walls cost at least together, whether their courses meet or not; `bar` where it is surely no less than that. */
  leastCost(bar: Cost | null): Cost {
    if (this.links.length === 0) return this.least.reduce(sumOf, noCost(this.wanting));
    const level = this.leastLevel(bar);
    const most = bar && compareCosts(bar, level) < 0 ? bar : level;
    // Most rooms' courses can meet, and then are far better so than a nanometre apart.
    if (compareCosts(this.nearlyMeeting, most) >= 0) return most;
    const apart = this.leastApart;
    return compareCosts(apart, most) < 0 ? apart : most;
  }

  /** Courses a nanometre apart at the corner that tells least. */
  private get nearlyMeeting(): Cost {
    const corners = new Map<string, Cost>();
    for (const link of this.links) {
      const key = `${link.a} ${link.b} ${link.end}`;
      const apart = costAt(this.wanting, link.place, this.apartBy(link, 1));
      corners.set(key, sumOf(apart, corners.get(key) ?? noCost(this.wanting)));
    }
    return [...corners.values()].reduce((a, b) => (compareCosts(b, a) < 0 ? b : a));
  }

  /** What they cost at least where some courses miss others: a nanometre missed, all else at its least. */
  private get leastApart(): Cost {
    return this.least.reduce(sumOf, this.nearlyMeeting);
  }

  /** What they cost at least with all open walls at one height; `bar` where it is surely no less. */
  private leastLevel(bar: Cost | null): Cost {
    // Heights alone settle most joints.
    let least = this.leastOfLevels(noCost(this.wanting), bar);
    const isOver = () => bar !== null && compareCosts(least, bar) >= 0;
    if (isOver()) return bar!;
    for (const { leastAcross } of this.walls) {
      least = sumOf(least, leastAcross);
      if (isOver()) return bar!;
    }
    for (const { leastMoving } of this.walls) if (leastMoving) least = sumOf(least, leastMoving);
    return least;
  }

  /** The least that all heights cost together, with what their walls cost besides; `most` where it is no less. */
  private leastOfLevels(besides: Cost, most: Cost | null): Cost {
    let least = most;
    for (const heights of this.levels(this.walls.map(({ tellingHeights }) => tellingHeights))) {
      let cost: Cost = sumOf(besides, this.missedBy(heights));
      for (const [i, wall] of this.walls.entries()) {
        if (least && compareCosts(cost, least) >= 0) break;
        cost = sumOf(cost, wall.leastOfHeight(heights[i]!));
      }
      if (!least || compareCosts(cost, least) < 0) least = cost;
    }
    return least!;
  }

  /**
   * The best that costs less than `most`; null when there is none. Heights at which walls cost no less than is hoped for aren't
   * looked at.
   */
  search(most: Cost | null, hope: Cost | null = null): LinkedFound | null {
    [this.most, this.hope] = [most, hope];
    if (this.links.length > 0) this.searchLevel();
    if (this.links.length === 0 || this.mayMiss()) {
      this.heights = this.walls.map((wall) => this.heightsFor(wall));
      this.go(0, [], noCost(this.wanting));
    }
    return this.best;
  }

  private most: Cost | null = null;
  private hope: Cost | null = null;

  /** What walls have to cost less than. Without a layout that was met there is none: the first is taken as it comes. */
  private get bar(): Cost | null {
    return this.best ? lesserOf(this.best.cost, this.hope) : this.most;
  }

  /** What heights have to cost less than. */
  private get heightsBar(): Cost | null {
    return this.bar ?? this.hope;
  }

  /** All open walls at one height: where courses can meet, the best is mostly found so. */
  private searchLevel(): void {
    const besides = this.walls
      .map(({ leastBesides }) => leastBesides)
      .reduce(sumOf, noCost(this.wanting));
    const all = this.walls.map(({ heights }) => heights);
    const levels = this.levels(all).map((heights) => {
      const least = this.walls
        .map((wall, i) => wall.leastOfHeight(heights[i]!))
        .reduce(sumOf, sumOf(besides, this.missedBy(heights)));
      return { heights, least };
    });
    levels.sort((a, b) => compareCosts(a.least, b.least));
    for (const { heights, least } of levels) {
      if (this.heightsBar && compareCosts(least, this.heightsBar) >= 0) return;
      if (this.bar && this.walls[0]!.isSpent()) return;
      this.weigh(heights, least);
    }
  }

  /** Ways for all open walls to stand at one height, from heights that are critical for some of them. */
  private levels(heights: readonly (readonly Nm[])[]): readonly (readonly Nm[])[] {
    const stated = this.walls.findIndex(({ isOpen }) => !isOpen);
    const root = Math.max(stated, 0);
    const own =
      stated >= 0 ? heights[root]! : heights.flatMap((each, i) => this.meeting(root, i, each));
    return this.walls[root]!.someHeights([...new Set(own)]).map((y) =>
      this.walls.map((wall, i) => (i === root ? y : this.levelWith(wall, root, y))),
    );
  }

  /** Heights of a wall that meet these of another. */
  private meeting(i: number, other: number, heights: readonly Nm[]): readonly Nm[] {
    if (i === other) return heights;
    const [wall, from] = [this.walls[i]!, this.walls[other]!];
    if (isAlike(wall, from)) return heights.map((y) => wall.lowest(y));
    return heights.flatMap((y) =>
      heightsMeeting(risingOf(wall), risingOf(from), y).map((height) => wall.lowest(height)),
    );
  }

  private levelWith(wall: WallAt, root: number, y: Nm): Nm {
    if (!wall.isOpen) return wall.heights[0]!;
    const other = this.walls[root]!;
    if (isAlike(wall, other)) return wall.lowest(y);
    const [level] = heightsMeeting(risingOf(wall), risingOf(other), y);
    return level === undefined ? wall.heights[0]! : wall.lowest(level);
  }

  private weigh(heights: readonly Nm[], least: Cost): void {
    this.weighed++;
    if (this.bonds.length > 0) this.weighBonded(heights);
    else this.weighApart(heights, least);
  }

  /** The corners at which the bond can go on with courses at these heights; all others miss what they miss. */
  private bondsAt(heights: readonly Nm[]): readonly Link[] {
    return this.bonds.filter((link) => {
      const [one, other] = [this.walls[link.a]!, this.walls[link.b]!];
      const ys = [heights[link.a]!, heights[link.b]!] as const;
      const missed = coursesMiss(coursesAt(one, ys[0]), coursesAt(other, ys[1]));
      return this.apartBy(link, missed) === 0;
    });
  }

  private weighBonded(heights: readonly Nm[]): void {
    const bonds = this.bondsAt(heights);
    const tables = this.tablesAt(bonds, heights);
    const bonded = new BondedWalls(this.wanting, this.walls, bonds, heights, tables, this.bar);
    const found = bonded.search(this.missedBy(heights));
    this.isThinned ||= tables.isThinned;
    if (found) this.best = found;
  }

  /** What starts miss beside each other: where sides are straight it hangs on how far courses are ahead, within their bonds' repeat. */
  private tablesAt(bonds: readonly Link[], heights: readonly Nm[]): BondTables {
    const key = bonds.map(({ a, b, end, place }) => {
      const [one, other] = [this.walls[a]!, this.walls[b]!];
      const [ya, yb] = [one.lowest(heights[a]!), other.lowest(heights[b]!)];
      if (!one.isEven || !other.isEven) return `${place} ${a} ${b} ${end} at ${ya} ${yb}`;
      const ahead = Math.round((ya - yb) / (one.lay.tile.face.up + one.joint));
      const repeat = repeatOf(one) * repeatOf(other);
      return `${place} ${a} ${b} ${end} ${((ahead % repeat) + repeat) % repeat}`;
    });
    const known =
      this.tables.get(key.join()) ?? new BondTables(this.wanting, this.walls, bonds, heights);
    this.tables.set(key.join(), known);
    return known;
  }

  private weighApart(heights: readonly Nm[], least: Cost): void {
    let cost = least;
    const found: WallFound[] = [];
    for (const [i, wall] of this.walls.entries()) {
      const own = wall.leastAt(heights[i]!);
      const others = lessBy(cost, own);
      const best = wall.bestAt(heights[i]!, this.bar ? lessBy(this.bar, others) : null);
      if (!best) return;
      found.push(best);
      cost = sumOf(others, best.cost);
    }
    if (this.bar && compareCosts(cost, this.bar) >= 0) return;
    this.best = { cost, walls: found };
  }

  private missedBy(heights: readonly Nm[]): Cost {
    return this.links.reduce<Cost>(
      (cost, link) => sumOf(cost, this.missAt(link, heights[link.a]!, heights[link.b]!)),
      noCost(this.wanting),
    );
  }

  private missAt(link: Link, ya: Nm, yb: Nm): Cost {
    const [one, other] = [this.walls[link.a]!, this.walls[link.b]!];
    const missed = coursesMiss(coursesAt(one, ya), coursesAt(other, yb));
    return costAt(this.wanting, link.place, this.apartBy(link, missed));
  }

  /** What courses that are so far apart miss of what is wanted of them; no bond goes on where they are. */
  private apartBy({ wanted, a, b }: Link, missed: Nm): Nm {
    if (wanted === "courses-meet") return missed;
    const [one, other] = [this.walls[a]!, this.walls[b]!];
    return missed === 0 && one.joint === other.joint ? 0 : one.lay.tile.face.across;
  }

  /** Whether courses that miss might still be better than the best. */
  private mayMiss(): boolean {
    return !this.heightsBar || compareCosts(this.leastApart, this.heightsBar) < 0;
  }

  /** Takes a height for one wall after another, the most promising first. */
  private go(i: number, heights: readonly Nm[], cost: Cost): void {
    const wall = this.walls[i];
    if (!wall) {
      this.weigh(heights, cost);
      return;
    }
    const rest = this.least.slice(i + 1).reduce(sumOf, noCost(this.wanting));
    const links = this.links.filter(({ a, b }) => Math.max(a, b) === i);
    const ways = this.heights[i]!.map((y) => {
      const missed = links.reduce<Cost>((sum, link) => {
        const [ya, yb] = [link.a, link.b].map((each) => (each === i ? y : heights[each]!));
        return sumOf(sum, this.missAt(link, ya!, yb!));
      }, wall.leastAt(y));
      return { y, cost: sumOf(cost, missed) };
    });
    ways.sort((a, b) => compareCosts(a.cost, b.cost));
    wall.spend(ROOM_LOOKS.height * ways.length);
    for (const way of ways) {
      if (this.heightsBar && !isUnder(way.cost, rest, this.heightsBar)) return;
      // Of heights that may miss there are too many to look for one that hopes allow.
      const isEnough = this.links.length > 0 ? this.heightsBar : this.bar;
      if (isEnough && wall.isSpent()) return;
      this.go(i + 1, [...heights, way.y], way.cost);
    }
  }

  /** The heights that may be the best for a wall: its own critical ones, and those at which it meets another's. */
  private heightsFor(wall: WallAt): readonly Nm[] {
    if (!wall.isOpen || this.links.length === 0) return wall.heights;
    const own = this.walls.indexOf(wall);
    const all = this.walls.flatMap((other, i) => this.meeting(own, i, other.heights));
    return wall.someHeights([...new Set(all)]);
  }
}

/** Whether courses of one wall meet the other's wherever they are level. */
function isAlike(a: WallAt, b: WallAt): boolean {
  return a.joint === b.joint && a.lay.tile.face.up === b.lay.tile.face.up;
}

/** After how many courses a wall's bond begins again. */
function repeatOf({ lay: { bond } }: WallAt): number {
  return bond.kind === "running" ? bond.q : 1;
}

function risingOf({ lay, joint }: WallAt): { face: Nm; joint: Nm } {
  return { face: lay.tile.face.up, joint };
}

function coursesAt({ lay, joint }: WallAt, y: Nm): Parameters<typeof coursesMiss>[0] {
  return { y, face: lay.tile.face, joint };
}
