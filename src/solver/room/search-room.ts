import type { Nm } from "../../measure/index.js";
import type { Plan, Wall, Wish } from "../../model/index.js";
import { thinned } from "../choose/budget.js";
import type { Effort } from "../choose/effort.js";
import { hasSlopes } from "../choose/sloped-origins.js";
import { isOneTile } from "./bond-miss.js";
import { ROOM_LOOKS, ROOM_MOST } from "./budget.js";
import { type Cluster, clustersOf, partsOf } from "./clusters.js";
import { type LayPair, wholePairs } from "./corners.js";
import { compareCosts, type Cost, lessBy, lesserOf, sumOf } from "./cost.js";
import { type Link, type LinkedFound, LinkedWalls } from "./linked-walls.js";
import { endsOf } from "./joint-ends.js";
import { roomJoints } from "./room-joints.js";
import { isFree } from "./settle.js";
import { WallAt, type WallFound } from "./wall-at.js";
import { WallFields } from "./wall-fields.js";
import { noCost, type TiledAt, type Wanting, wantingOf } from "./wanting.js";

/** A room laid together. */
export interface RoomFound {
  /** By the walls' numbers; only laid ones. */
  readonly walls: ReadonlyMap<number, WallFound>;
  /** How many joints and heights of the room were weighed. */
  readonly weighed: number;
  /** Whether not all that may be better was looked at. */
  readonly capped: boolean;
  /** How its clusters are laid, in their order; null for one that can't be. */
  readonly clusters: readonly (ClusterLaid | null)[];
}

/** Walls that hang together, laid. */
export interface ClusterLaid {
  /** In the order of the cluster's walls. */
  readonly walls: readonly WallFound[];
  readonly cost: Cost;
  /** Whether what may move stands apart from the rest. */
  readonly isStrict: boolean;
}

/** A room that the same walls were laid as, for the same wishes in another order, and the wish that is to be missed by less. */
export interface Nearer {
  readonly than: RoomFound;
  /** The wish's place in the costs of that room. */
  readonly place: number;
}

/** The joint of each wall, by its number. */
type Joints = ReadonlyMap<number, Nm>;

/** Walls that corners link, and their search. */
interface LinkedPart {
  readonly walls: readonly WallAt[];
  readonly linked: LinkedWalls;
}

/** Joints and what they cost at least. */
interface BoundedJoints {
  readonly joints: Joints;
  readonly least: Cost;
  /** Its walls, as far as they are known, where they are kept. */
  readonly parts?: readonly LinkedPart[];
}

function byLeast(all: readonly BoundedJoints[]): BoundedJoints[] {
  return [...all].sort((a, b) => compareCosts(a.least, b.least));
}

/** A cluster laid together. */
interface ClusterFound {
  readonly parts: readonly LinkedFound[];
  readonly cost: Cost;
}

/** Where walls stand that have one lay each; by default it has all of its wall. */
export interface RoomGround {
  readonly tiledAt?: TiledAt;
  /** Where they meet; by default at all corners. */
  readonly pairs?: readonly LayPair[];
  /** What part of all looks the search may take; by default all. */
  readonly share?: number;
  /** What is known; a search that comes no nearer than that keeps it. Its wish has to be the first of this search. */
  readonly nearer?: Nearer | null;
}

/** Finds the best layout of walls together for these wishes, the most wanted first. */
export function searchRoom(
  plan: Plan,
  walls: readonly Wall[],
  wishes: readonly Wish[],
  { tiledAt, pairs = wholePairs(walls), share = 1, nearer = null }: RoomGround = {},
): RoomFound {
  return new RoomSearch(wantingOf(plan, wishes, tiledAt), walls, pairs, share, nearer).run();
}

class RoomSearch {
  /** What isn't this search's share counts as spent. */
  private readonly effort: Effort;
  private readonly links: readonly Link[];
  private weighed = 0;
  private capped = false;
  /** Whether what may move has to stay apart from the rest. */
  private isStrict = true;

  constructor(
    private readonly wanting: Wanting,
    private readonly walls: readonly Wall[],
    pairs: readonly LayPair[],
    share: number,
    private readonly nearer: Nearer | null,
  ) {
    this.effort = {
      cells: Math.round(ROOM_MOST.cells * (1 - share)),
      round: ROOM_LOOKS.round,
      share,
    };
    this.links = wanting.wishes.flatMap(({ wish, place }) => {
      const { kind: wanted } = wish.wanted;
      if (wanted !== "courses-meet" && wanted !== "bond-goes-on") return [];
      return pairs
        .filter(
          ({ a, b }) => wish.wall === null || [a, b].some((i) => walls[i]!.name === wish.wall),
        )
        .filter(
          ({ a, b, isBonded }) => wanted === "courses-meet" || (isBonded && this.haveOneTile(a, b)),
        )
        .map(({ a, b, end, isSayable }) => ({ a, b, end, isSayable, place, wanted }));
    });
  }

  private haveOneTile(a: number, b: number): boolean {
    return isOneTile(this.walls[a]!.lays[0]!.tile, this.walls[b]!.lays[0]!.tile);
  }

  run(): RoomFound {
    const all = clustersOf(this.walls, this.links);
    const known = all.map((_, i) => this.nearer?.than.clusters[i] ?? null);
    // A cluster that misses nothing of the wish can't come nearer: it is as good as it can be.
    const open = all.filter((_, i) => !known[i] || known[i].cost[this.nearer!.place]! > 0);
    const before = this.effort.cells;
    const each = (ROOM_MOST.cells - before) / open.length;
    const clusters = all.map((cluster, i) => {
      if (!open.includes(cluster)) return known[i]!;
      // Every cluster has its share of what is left.
      this.effort.cells = Math.max(this.effort.cells, before + each * open.indexOf(cluster));
      return this.searchCluster(cluster, known[i]!);
    });
    this.capped ||= this.effort.cells > ROOM_MOST.cells;
    this.capped ||= known.some(
      (laid, i) => laid && laid === clusters[i] && this.nearer!.than.capped,
    );
    const walls = all.flatMap((cluster, i) =>
      (clusters[i]?.walls ?? []).map((wall, k) => [cluster.walls[k]!, wall] as const),
    );
    return { walls: new Map(walls), weighed: this.weighed, capped: this.capped, clusters };
  }

  /** The best layout of a cluster; where it is laid already, the best that misses the first wish by less, or that one. */
  private searchCluster(cluster: Cluster, known: ClusterLaid | null): ClusterLaid | null {
    if (known) return this.bestOf(cluster, known.isStrict, this.barUnder(known)) ?? known;
    // Where openings can't be kept apart however they stand, they stay over one another, as they are told.
    return this.bestOf(cluster, true, null) ?? this.bestOf(cluster, false, null);
  }

  /** What only a layout that misses the first wish by less can cost less than; of those that miss it as much, the known one is the best. */
  private barUnder({ cost }: ClusterLaid): Cost {
    const [bare] = cost;
    return noCost(this.wanting).map((none, i) =>
      i === 0 ? bare! : i === 1 ? cost[this.nearer!.place]! : none,
    );
  }

  private bestOf(cluster: Cluster, isStrict: boolean, most: Cost | null): ClusterLaid | null {
    this.isStrict = isStrict;
    const found: { best: ClusterFound | null } = { best: null };
    const cost = () => lesserOf(found.best?.cost ?? null, most);
    const take = ({ joints, parts }: BoundedJoints) => {
      const bar = found.best && cost();
      const walls = parts ?? this.linkedAt(cluster, joints);
      found.best = this.searchAt(walls, bar, most) ?? found.best;
    };
    const all = this.jointsFor(cluster);
    // The ends of the range are good for a first answer: most others then needn't be looked at closely.
    const ends = all.length > 1 ? [all[0]!, all.at(-1)!] : all;
    const before = this.effort.cells;
    const bounds = this.bounded(cluster, ends, most, true);
    const each = Math.max(1, (this.effort.cells - before) / ends.length);
    for (const joints of byLeast(bounds)) {
      if (found.best && this.effort.cells > ROOM_MOST.cells) break;
      take(joints);
    }
    const many = Math.max(2, Math.floor(ROOM_MOST.bounds / each));
    const some = thinned(all.slice(1, -1), Math.min(many, ROOM_MOST.joints));
    if (some.length < all.length - 2) this.capped = true;
    const open = this.bounded(cluster, some, cost());
    const more = this.besidesOpen(cluster, [bounds[0]!, ...open, bounds.at(-1)!], cost());
    for (const joints of byLeast([...open, ...more])) {
      const bar = cost();
      if (bar && compareCosts(joints.least, bar) >= 0) break;
      if (found.best && this.effort.cells > ROOM_MOST.cells) break;
      take(joints);
    }
    if (!found.best || (most && compareCosts(found.best.cost, most) >= 0)) return null;
    return this.laid(cluster, found.best);
  }

  private laid(cluster: Cluster, { parts, cost }: ClusterFound): ClusterLaid {
    const numbers = this.partsOf(cluster).flat();
    const walls = parts.flatMap((part) => part.walls);
    return {
      walls: cluster.walls.map((i) => walls[numbers.indexOf(i)]!),
      cost,
      isStrict: this.isStrict,
    };
  }

  /**
   * Joints that are critical for what may move alone. Between two others nothing changes but how large cuts
   * are, so that they cost at least as much as one of their neighbours costs at least.
   */
  private besidesOpen(
    cluster: Cluster,
    all: readonly BoundedJoints[],
    bar: Cost | null,
  ): BoundedJoints[] {
    if (all.length < 2 || !cluster.walls.some((i) => isFree(this.walls[i]!))) return [];
    const [group] = cluster.groups;
    if (cluster.groups.length > 1) {
      this.capped = true;
      return [];
    }
    const known = all.map(({ joints }) => joints.get(group!.walls[0]!)!);
    let alone: readonly Nm[] | null = null;
    const isPromising = ({ least }: BoundedJoints) => !bar || compareCosts(least, bar) < 0;
    const found = all.slice(1).flatMap((next, k): Joints[] => {
      if (!isPromising(all[k]!) && !isPromising(next)) return [];
      alone ??= this.jointsOf(group!.walls, true);
      return alone
        .filter((joint) => joint > known[k]! && joint < known[k + 1]!)
        .map((joint) => new Map(group!.walls.map((i) => [i, joint])));
    });
    const some = thinned(found, ROOM_MOST.more);
    if (some.length < found.length) this.capped = true;
    return this.bounded(cluster, some, bar);
  }

  /** What joints cost at least; `bar` where that is surely no less than it. */
  private bounded(
    cluster: Cluster,
    all: readonly Joints[],
    bar: Cost | null,
    isKept = false,
  ): BoundedJoints[] {
    // What a joint's starts come to is not kept while many others are looked at: there may be thousands.
    return all.flatMap((joints, i): BoundedJoints[] => {
      if (i > 0 && this.effort.cells > ROOM_MOST.cells) {
        this.capped = true;
        return [];
      }
      const parts = this.linkedAt(cluster, joints);
      const barOf = parts.length === 1 ? bar : null;
      const least = parts.map(({ linked }) => linked.leastCost(barOf));
      this.capped ||= parts.some(({ walls }) => walls.some(({ isThinned }) => isThinned));
      const bounded = { joints, least: least.reduce(sumOf, noCost(this.wanting)) };
      return [isKept ? { ...bounded, parts } : bounded];
    });
  }

  private partsOf(cluster: Cluster): number[][] {
    return partsOf(
      cluster.walls,
      this.links.filter(({ a }) => cluster.walls.includes(a)).map(({ a, b }) => [a, b]),
    );
  }

  /**
   * The best layout of a cluster's walls at their joints, if it costs less than `most`. What costs no less than is hoped for is left
   * out as soon as that is told of its heights; the first that is met is good for a bar all the same.
   */
  private searchAt(
    parts: readonly LinkedPart[],
    most: Cost | null,
    hope: Cost | null,
  ): ClusterFound | null {
    const bar = most ?? hope;
    const barOf = parts.length === 1 ? bar : null;
    const least = parts.map(({ linked }) => linked.leastCost(barOf));
    let cost = least.reduce(sumOf, noCost(this.wanting));
    if (bar && compareCosts(cost, bar) >= 0) return null;
    const found: LinkedFound[] = [];
    for (const [i, { linked, walls }] of parts.entries()) {
      const others = lessBy(cost, least[i]!);
      const best = linked.search(most && lessBy(most, others), hope && lessBy(hope, others));
      this.weighed += linked.weighed;
      this.capped ||= linked.isThinned;
      this.capped ||= walls.some(({ isThinned }) => isThinned);
      if (!best) return null;
      found.push(best);
      cost = sumOf(others, best.cost);
    }
    return { parts: found, cost };
  }

  /** A cluster's walls in parts that corners link, at these joints. */
  private linkedAt(cluster: Cluster, joints: Joints): LinkedPart[] {
    return this.partsOf(cluster).map((numbers) => {
      const walls = numbers.map((i) => this.wallAt(i, joints.get(i)!));
      const links = this.links.flatMap((link): Link[] => {
        if (!numbers.includes(link.a)) return [];
        return [{ ...link, a: numbers.indexOf(link.a), b: numbers.indexOf(link.b) }];
      });
      return { walls, linked: new LinkedWalls(this.wanting, walls, links) };
    });
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

  /** The critical joints of walls that share one; with `isAll` those too that are critical for what may move alone. */
  private jointsOf(numbers: readonly number[], isAll = false): readonly Nm[] {
    const { min, max } = this.walls[numbers[0]!]!.lays[0]!.joint;
    const walls = numbers.map((i) => [min, max].map((joint) => this.fieldsAt(i, joint)));
    for (const [least] of walls) {
      const { own } = least!.first;
      if (hasSlopes(own) || own.circles.length > 0) this.capped = true;
    }
    if (min === max) return [min];
    // Joints at which starts that come round a corner meet what is critical there are not looked for.
    const isBonded = ({ a, b, wanted }: Link): boolean =>
      wanted === "bond-goes-on" && (numbers.includes(a) || numbers.includes(b));
    if (this.links.some(isBonded)) this.capped = true;
    const ends = walls.flatMap(([least, most]) => endsOf(least!, most!, isAll));
    const { joints, isAll: areAll } = roomJoints(ends);
    if (!areAll) this.capped = true;
    return joints;
  }

  private fieldsAt(i: number, joint: Nm): WallFields {
    const wall = this.walls[i]!;
    return new WallFields(this.wanting, wall, wall.lays[0]!, joint, this.effort, this.walls.length);
  }
}
