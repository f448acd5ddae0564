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
  private knownLeast: readonly Cost[] | null = null;

  constructor(
    private readonly wanting: Wanting,
    private readonly walls: readonly WallAt[],
    private readonly links: readonly Link[],
  ) {}

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

  /** A nanometre missed at the corner that tells least. */
  private get nearlyMeeting(): Cost {
    return costAt(this.wanting, Math.max(...this.links.map((link) => link.place)), 1);
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

  /** The best that costs less than `most`; null when there is none. */
  search(most: Cost | null): LinkedFound | null {
    this.most = most;
    if (this.links.length > 0) this.searchLevel();
    if (this.links.length === 0 || this.mayMiss()) {
      this.heights = this.walls.map((wall) => this.heightsFor(wall));
      this.go(0, [], noCost(this.wanting));
    }
    return this.best;
  }

  private most: Cost | null = null;

  private get bar(): Cost | null {
    return this.best?.cost ?? this.most;
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
      if (this.bar && compareCosts(least, this.bar) >= 0) return;
      if (this.best && this.walls[0]!.isSpent()) return;
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

  /** Whether courses that miss might still be better than the best. */
  private mayMiss(): boolean {
    return !this.best || compareCosts(this.leastApart, this.best.cost) < 0;
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
    const own = this.walls.indexOf(wall);
    const all = this.walls.flatMap((other, i) => this.meeting(own, i, other.heights));
    return wall.someHeights([...new Set(all)]);
  }
}

function isUnder(a: Cost, b: Cost, most: Cost): boolean {
  return !isOver(a, b, most) && compareCosts(sumOf(a, b), most) < 0;
}

/** Whether courses of one wall meet the other's wherever they are level. */
function isAlike(a: WallAt, b: WallAt): boolean {
  return a.joint === b.joint && a.lay.tile.face.up === b.lay.tile.face.up;
}

function risingOf({ lay, joint }: WallAt): { face: Nm; joint: Nm } {
  return { face: lay.tile.face.up, joint };
}

function coursesAt({ lay, joint }: WallAt, y: Nm): Parameters<typeof coursesMiss>[0] {
  return { y, face: lay.tile.face, joint };
}
