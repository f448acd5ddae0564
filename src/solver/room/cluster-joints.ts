import type { Nm } from "../../measure/index.js";
import type { Wall } from "../../model/index.js";
import { hasSlopes } from "../choose/sloped-origins.js";
import type { Cluster } from "./clusters.js";
import { endsOf } from "./joint-ends.js";
import type { Link } from "./linked-walls.js";
import { roomJoints } from "./room-joints.js";
import type { WallFields } from "./wall-fields.js";

/** The joint of each wall, by its number. */
export type Joints = ReadonlyMap<number, Nm>;

/** The joints that may be the best for walls that hang together. */
export class ClusterJoints {
  /** Whether others may be critical that are not looked for. */
  isThinned = false;
  private alone: readonly Nm[] | null = null;

  constructor(
    private readonly cluster: Cluster,
    private readonly walls: readonly Wall[],
    private readonly links: readonly Link[],
    private readonly fieldsAt: (i: number, joint: Nm) => WallFields,
  ) {}

  /** Every way to take one joint for each of the cluster's groups, narrow ones first. */
  ways(): readonly Joints[] {
    const { groups } = this.cluster;
    const lists = groups.map(({ walls }) => this.jointsOf(walls, false));
    return lists.reduce<Joints[]>(
      (ways, list, k) =>
        ways.flatMap((way) =>
          list.map((joint) => new Map([...way, ...alike(groups[k]!.walls, joint)])),
        ),
      [new Map<number, Nm>()],
    );
  }

  /** Those of a cluster of one group that lie between two joints and are critical for what may move alone. */
  between(least: Nm, most: Nm): readonly Joints[] {
    const [{ walls }] = this.cluster.groups as [Cluster["groups"][number]];
    this.alone ??= this.jointsOf(walls, true);
    return this.alone
      .filter((joint) => joint > least && joint < most)
      .map((joint) => new Map(alike(walls, joint)));
  }

  /** The critical joints of walls that share one; with `isAll` those too that are critical for what may move alone. */
  private jointsOf(numbers: readonly number[], isAll: boolean): readonly Nm[] {
    const { min, max } = this.walls[numbers[0]!]!.lays[0]!.joint;
    const walls = numbers.map((i) => [min, max].map((joint) => this.fieldsAt(i, joint)));
    for (const [least] of walls) {
      const { own } = least!.first;
      if (hasSlopes(own) || own.circles.length > 0) this.isThinned = true;
    }
    if (min === max) return [min];
    // Joints at which starts that come round a corner meet what is critical there are not looked for.
    const isBonded = ({ a, b, wanted }: Link): boolean =>
      wanted === "bond-goes-on" && (numbers.includes(a) || numbers.includes(b));
    if (this.links.some(isBonded)) this.isThinned = true;
    const ends = walls.flatMap(([least, most]) => endsOf(least!, most!, isAll));
    const { joints, isAll: areAll } = roomJoints(ends);
    if (!areAll) this.isThinned = true;
    return joints;
  }
}

function alike(walls: readonly number[], joint: Nm): (readonly [number, Nm])[] {
  return walls.map((i) => [i, joint] as const);
}
