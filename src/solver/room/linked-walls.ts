import type { Nm } from "../../measure/index.js";
import { compareCosts, type Cost, isOver, lessBy, sumOf } from "./cost.js";
import { heightsMeeting } from "./course-heights.js";
import { coursesMiss } from "./misses.js";
import type { WallAt, WallFound } from "./wall-at.js";
import { costAt, noCost, type Wanting } from "./wanting.js";

/** A corner at which courses are wanted to meet, between two walls of a list, and the wish's place. */
export interface Link {
  readonly a: number;
  readonly b: number;
  readonly place: number;
}

/** Walls laid together. */
export interface LinkedFound {
  readonly cost: Cost;
  readonly walls: readonly WallFound[];
}

/** Finds the best heights for walls that corners link, each at its joint. */
export class LinkedWalls {
  weighed = 0;
  private best: LinkedFound | null = null;
  private heights: readonly (readonly Nm[])[] = [];
  private readonly least: readonly Cost[];

  constructor(
    private readonly wanting: Wanting,
    private readonly walls: readonly WallAt[],
    private readonly links: readonly Link[],
  ) {
    this.least = walls.map(({ least }) => least);
  }

  /** What the walls cost at least together, whether their courses meet or not. */
  get leastCost(): Cost {
    return this.least.reduce(sumOf, noCost(this.wanting));
  }

  /** The best that costs less than `most`; null when there is none. */
  search(most: Cost | null): LinkedFound | null {
    this.most = most;
    this.heights = this.walls.map((wall) => this.heightsFor(wall));
    if (this.links.length > 0) this.searchLevel();
    if (this.links.length === 0 || this.mayMiss()) this.go(0, [], noCost(this.wanting));
    return this.best;
  }

  private most: Cost | null = null;

  private get bar(): Cost | null {
    return this.best?.cost ?? this.most;
  }

  /** All open walls at one height: where courses can meet, the best is mostly found so. */
  private searchLevel(): void {
    const stated = this.walls.findIndex(({ isOpen }) => !isOpen);
    const root = Math.max(stated, 0);
    const levels = this.heights[root]!.map((y) => {
      const heights = this.walls.map((wall, i) => (i === root ? y : this.levelWith(wall, root, y)));
      const least = this.walls
        .map((wall, i) => wall.leastAt(heights[i]!))
        .reduce(sumOf, this.missedBy(heights));
      return { heights, least };
    });
    levels.sort((a, b) => compareCosts(a.least, b.least));
    for (const { heights, least } of levels) {
      if (this.bar && compareCosts(least, this.bar) >= 0) return;
      if (this.best && this.walls[0]!.isSpent()) return;
      this.weigh(heights, least);
    }
  }

  private levelWith(wall: WallAt, root: number, y: Nm): Nm {
    if (!wall.isOpen) return wall.heights[0]!;
    const other = this.walls[root]!;
    const [level] = heightsMeeting(risingOf(wall), risingOf(other), y);
    return level === undefined ? wall.heights[0]! : wall.lowest(level);
  }

  private weigh(heights: readonly Nm[], least: Cost): void {
    let cost = least;
    const found: WallFound[] = [];
    this.weighed++;
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
      (cost, { a, b, place }) => sumOf(cost, this.missAt(a, b, place, heights[a]!, heights[b]!)),
      noCost(this.wanting),
    );
  }

  private missAt(a: number, b: number, place: number, ya: Nm, yb: Nm): Cost {
    const [one, other] = [this.walls[a]!, this.walls[b]!];
    const missed = coursesMiss(coursesAt(one, ya), coursesAt(other, yb));
    return costAt(this.wanting, place, missed);
  }

  /** Whether courses that miss might still be better than the best: a nanometre missed, all else at its least. */
  private mayMiss(): boolean {
    if (!this.best) return true;
    const place = Math.max(...this.links.map((link) => link.place));
    const least = this.least.reduce(sumOf, costAt(this.wanting, place, 1));
    return compareCosts(least, this.best.cost) < 0;
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
      const missed = links.reduce<Cost>((sum, { a, b, place }) => {
        const [ya, yb] = [a, b].map((each) => (each === i ? y : heights[each]!));
        return sumOf(sum, this.missAt(a, b, place, ya!, yb!));
      }, wall.leastAt(y));
      return { y, cost: sumOf(cost, missed) };
    });
    ways.sort((a, b) => compareCosts(a.cost, b.cost));
    for (const way of ways) {
      if (this.bar && !isUnder(way.cost, rest, this.bar)) return;
      if (this.best && wall.isSpent()) return;
      this.go(i + 1, [...heights, way.y], way.cost);
    }
  }

  /** The heights that may be the best for a wall: its own critical ones, and those at which it meets another's. */
  private heightsFor(wall: WallAt): readonly Nm[] {
    if (!wall.isOpen || this.links.length === 0) return wall.heights;
    const meeting = this.walls
      .filter((other) => other !== wall)
      .flatMap((other) =>
        other.heights.flatMap((y) => heightsMeeting(risingOf(wall), risingOf(other), y)),
      );
    const all = [...new Set([...wall.heights, ...meeting].map((y) => wall.lowest(y)))];
    return wall.someHeights(all);
  }
}

function isUnder(a: Cost, b: Cost, most: Cost): boolean {
  return !isOver(a, b, most) && compareCosts(sumOf(a, b), most) < 0;
}

function risingOf({ lay, joint }: WallAt): { face: Nm; joint: Nm } {
  return { face: lay.tile.face.up, joint };
}

function coursesAt({ lay, joint }: WallAt, y: Nm): Parameters<typeof coursesMiss>[0] {
  return { y, face: lay.tile.face, joint };
}
