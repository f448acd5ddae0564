import type { Nm } from "../../measure/index.js";
import type { Plan, Wall, Wish } from "../../model/index.js";
import { thinned } from "../choose/budget.js";
import type { Effort } from "../choose/effort.js";
import { type Field, fieldOf } from "../choose/field.js";
import { hasSlopes } from "../choose/sloped-origins.js";
import { ROOM_MOST } from "./budget.js";
import { type Cluster, clustersOf, partsOf } from "./clusters.js";
import { type CornerPair, cornerPairs } from "./corners.js";
import { compareCosts, type Cost, lessBy, sumOf } from "./cost.js";
import { type Link, type LinkedFound, LinkedWalls } from "./linked-walls.js";
import { type Ends, roomJoints } from "./room-joints.js";
import { WallAt, type WallFound } from "./wall-at.js";
import { limitsUnder, noCost, type Wanting, wantingOf } from "./wanting.js";

/** A room laid together. */
export interface RoomFound {
  /** By the walls' numbers; only laid ones. */
  readonly walls: ReadonlyMap<number, WallFound>;
  /** How many joints and heights of the room were weighed. */
  readonly weighed: number;
  /** Whether not all that may be better was looked at. */
  readonly capped: boolean;
}

/** The joint of each wall, by its number. */
type Joints = ReadonlyMap<number, Nm>;

/** Finds the best layout of walls together for these wishes, the most wanted first. */
export function searchRoom(plan: Plan, walls: readonly Wall[], wishes: readonly Wish[]): RoomFound {
  return new RoomSearch(wantingOf(plan, wishes), walls).run();
}

class RoomSearch {
  private readonly effort: Effort = { cells: 0 };
  private readonly links: readonly (CornerPair & { readonly place: number })[];
  private readonly found = new Map<number, WallFound>();
  private weighed = 0;
  private capped = false;
  /** Whether what may move has to stay apart from the rest. */
  private isStrict = true;

  constructor(
    private readonly wanting: Wanting,
    private readonly walls: readonly Wall[],
  ) {
    const corners = cornerPairs(walls);
    this.links = wanting.wishes.flatMap(({ wish, place }) =>
      wish.wanted.kind !== "courses-meet"
        ? []
        : corners
            .filter(
              ({ a, b }) => wish.wall === null || [a, b].some((i) => walls[i]!.name === wish.wall),
            )
            .map((pair) => ({ ...pair, place })),
    );
  }

  run(): RoomFound {
    const clusters = clustersOf(this.walls, this.links);
    for (const [i, cluster] of clusters.entries()) {
      // Every cluster has its share of what is left.
      const spent = this.effort.cells;
      this.effort.cells = Math.max(spent, (ROOM_MOST.cells * i) / clusters.length);
      this.searchCluster(cluster);
    }
    this.capped ||= this.effort.cells > ROOM_MOST.cells;
    return { walls: this.found, weighed: this.weighed, capped: this.capped };
  }

  private searchCluster(cluster: Cluster): void {
    // Where openings can't be kept apart however they stand, they stay over one another, as they are told.
    const best = this.bestOf(cluster, true) ?? this.bestOf(cluster, false);
    const numbers = this.partsOf(cluster).flat();
    const walls = best?.flatMap((part) => part.walls) ?? [];
    walls.forEach((wall, i) => this.found.set(numbers[i]!, wall));
  }

  private bestOf(cluster: Cluster, isStrict: boolean): readonly LinkedFound[] | null {
    this.isStrict = isStrict;
    let best: LinkedFound[] | null = null;
    let cost: Cost | null = null;
    for (const { joints, least } of this.inOrder(cluster)) {
      if (cost && compareCosts(least, cost) >= 0) break;
      if (cost && this.effort.cells > ROOM_MOST.cells) break;
      const found = this.searchAt(cluster, joints, cost);
      if (!found) continue;
      best = found.parts;
      cost = found.cost;
    }
    return best;
  }

  /** The joints to look at, by what they cost at least. */
  private inOrder(cluster: Cluster): { joints: Joints; least: Cost }[] {
    const all = this.jointsFor(cluster);
    const bounded = (joints: Joints) => {
      const walls = cluster.walls.map((i) => this.wallAt(i, joints.get(i)!));
      // What a joint's starts come to is not kept while others are looked at: there may be thousands.
      return { joints, least: walls.map(({ least }) => least).reduce(sumOf, noCost(this.wanting)) };
    };
    const before = this.effort.cells;
    const first = bounded(all[0]!);
    if (all.length === 1) return [first];
    const most = Math.max(2, Math.floor(ROOM_MOST.bounds / (this.effort.cells - before)));
    const some = thinned(all, Math.min(most, ROOM_MOST.joints));
    if (some.length < all.length) this.capped = true;
    return some.map(bounded).sort((a, b) => compareCosts(a.least, b.least));
  }

  private partsOf(cluster: Cluster): number[][] {
    return partsOf(
      cluster.walls,
      this.links.filter(({ a }) => cluster.walls.includes(a)).map(({ a, b }) => [a, b]),
    );
  }

  /** The best layout of a cluster at these joints, if it costs less than `most`. */
  private searchAt(
    cluster: Cluster,
    joints: Joints,
    most: Cost | null,
  ): { readonly parts: LinkedFound[]; readonly cost: Cost } | null {
    const parts = this.partsOf(cluster).map((numbers) => {
      const walls = numbers.map((i) => this.wallAt(i, joints.get(i)!));
      const links = this.links.flatMap(({ a, b, place }): Link[] =>
        numbers.includes(a) ? [{ a: numbers.indexOf(a), b: numbers.indexOf(b), place }] : [],
      );
      return { walls, linked: new LinkedWalls(this.wanting, walls, links) };
    });
    const least = parts.map(({ linked }) => linked.leastCost);
    let cost = least.reduce(sumOf, noCost(this.wanting));
    if (most && compareCosts(cost, most) >= 0) return null;
    const found: LinkedFound[] = [];
    for (const [i, { linked, walls }] of parts.entries()) {
      const others = lessBy(cost, least[i]!);
      const best = linked.search(most ? lessBy(most, others) : null);
      this.weighed += linked.weighed;
      this.capped ||= walls.some(({ isThinned }) => isThinned);
      if (!best) return null;
      found.push(best);
      cost = sumOf(others, best.cost);
    }
    return { parts: found, cost };
  }

  private wallAt(i: number, joint: Nm): WallAt {
    const wall = this.walls[i]!;
    return new WallAt(
      this.wanting,
      wall,
      wall.lays[0]!,
      joint,
      this.effort,
      this.isStrict,
      this.walls.length,
    );
  }

  /** Every way to take one joint for each of a cluster's groups. */
  private jointsFor(cluster: Cluster): Joints[] {
    const lists = cluster.groups.map(({ walls }) => this.jointsOf(walls));
    return lists.reduce<Joints[]>(
      (ways, list, k) =>
        ways.flatMap((way) =>
          list.map(
            (joint) =>
              new Map([...way, ...cluster.groups[k]!.walls.map((i) => [i, joint] as const)]),
          ),
        ),
      [new Map<number, Nm>()],
    );
  }

  private jointsOf(numbers: readonly number[]): readonly Nm[] {
    const { min, max } = this.walls[numbers[0]!]!.lays[0]!.joint;
    for (const i of numbers) {
      const field = this.fieldAt(i, min, null);
      if (hasSlopes(field) || field.circles.length > 0) this.capped = true;
    }
    if (min === max) return [min];
    const ends = numbers.flatMap((i): Ends[] => [
      { least: this.fieldAt(i, min, null), most: this.fieldAt(i, max, null) },
      ...this.wanting.wishes.flatMap(({ wish: { wanted } }) =>
        wanted.kind === "no-cut"
          ? [
              {
                least: this.fieldAt(i, min, wanted.under),
                most: this.fieldAt(i, max, wanted.under),
              },
            ]
          : [],
      ),
    ]);
    const { joints, isAll } = roomJoints(ends);
    if (!isAll) this.capped = true;
    return joints;
  }

  private fieldAt(i: number, joint: Nm, under: Nm | null): Field {
    const { plan } = this.wanting;
    const wall = this.walls[i]!;
    const limits = under === null ? plan.limits : limitsUnder(plan.limits, under);
    return fieldOf({ ...plan, limits }, wall, wall.lays[0]!, joint);
  }
}
