import type { Nm } from "../../measure/index.js";
import type { Plan, Wall, Wish } from "../../model/index.js";
import { thinned } from "../choose/budget.js";
import type { Effort } from "../choose/effort.js";
import { ROOM_LOOKS, ROOM_MOST } from "./budget.js";
import { ClusterJoints, type Joints } from "./cluster-joints.js";
import { type Cluster, clustersOf, partsOf } from "./clusters.js";
import { linksOf } from "./room-links.js";
import { type LayPair, wholePairs } from "./corners.js";
import { compareCosts, type Cost, lessBy, lesserOf, sumOf } from "./cost.js";
import { type Link, type LinkedFound, LinkedWalls } from "./linked-walls.js";
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
    this.links = linksOf(wanting, walls, pairs);
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
    const take = (bounded: BoundedJoints) => {
      const bar = found.best && cost();
      const walls = bounded.parts ?? this.linkedAt(cluster, bounded.joints);
      found.best = this.searchAt(walls, bar, most) ?? found.best;
    };
    const joints = new ClusterJoints(cluster, this.walls, this.links, (i, joint) =>
      this.fieldsAt(i, joint),
    );
    const all = joints.ways();
    // The ends of the range are good for a first answer: most others then needn't be looked at closely.
    const ends = all.length > 1 ? [all[0]!, all.at(-1)!] : all;
    const before = this.effort.cells;
    const bounds = this.bounded(cluster, ends, most, true);
    const each = Math.max(1, (this.effort.cells - before) / ends.length);
    for (const bounded of byLeast(bounds)) {
      if (found.best && this.effort.cells > ROOM_MOST.cells) break;
      take(bounded);
    }
    const many = Math.max(2, Math.floor(ROOM_MOST.bounds / each));
    const some = thinned(all.slice(1, -1), Math.min(many, ROOM_MOST.joints));
    if (some.length < all.length - 2) this.capped = true;
    const open = this.bounded(cluster, some, cost());
    const known = [bounds[0]!, ...open, bounds.at(-1)!];
    const more = this.besidesOpen(cluster, joints, known, cost());
    this.capped ||= joints.isThinned;
    for (const bounded of byLeast([...open, ...more])) {
      const bar = cost();
      if (bar && compareCosts(bounded.least, bar) >= 0) break;
      if (found.best && this.effort.cells > ROOM_MOST.cells) break;
      take(bounded);
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
    joints: ClusterJoints,
    all: readonly BoundedJoints[],
    bar: Cost | null,
  ): BoundedJoints[] {
    if (all.length < 2 || !cluster.walls.some((i) => isFree(this.walls[i]!))) return [];
    if (cluster.groups.length > 1) {
      this.capped = true;
      return [];
    }
    const [first] = cluster.walls;
    const known = all.map((each) => each.joints.get(first!)!);
    const isPromising = ({ least }: BoundedJoints) => !bar || compareCosts(least, bar) < 0;
    const found = all.slice(1).flatMap((next, k): readonly Joints[] => {
      if (!isPromising(all[k]!) && !isPromising(next)) return [];
      return joints.between(known[k]!, known[k + 1]!);
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

  private fieldsAt(i: number, joint: Nm): WallFields {
    const wall = this.walls[i]!;
    return new WallFields(this.wanting, wall, wall.lays[0]!, joint, this.effort, this.walls.length);
  }
}
