import type { Nm } from "../measure/index.js";
import type { Lay, Plan, UpStart, Wall } from "../model/index.js";
import { inPlacingOrder } from "./lay-order.js";
import { layRegion, type LayPlot, type Placed, placedBy, standOf } from "./lay-region.js";
import type { LoneLay } from "./lone-lays.js";
import { regionOf } from "./region.js";
import { jointGroups } from "./room/index.js";
import type { Region } from "./solved.js";

/**
 * Where the lays of a plan's walls have their places, as far as their joints are known: a lay begins past those that
 * have their places before it, by joints that may still be left open.
 */
export class LayGrounds {
  private readonly groups = new Map<Lay, number>();
  private readonly joints = new Map<number, Nm>();
  /** Of each wall, its lays in the order of their places, and the first few of them as they are placed with such joints. */
  private readonly orders = new Map<Wall, readonly Lay[]>();
  private readonly known = new Map<Wall, Map<string, readonly Placed[]>>();

  constructor(
    private readonly plan: Plan,
    lays: readonly LoneLay[],
  ) {
    const all = lays.map(({ lay }) => lay);
    jointGroups(all).forEach((group, k) => group.forEach((i) => this.groups.set(all[i]!, k)));
  }

  /** Says which joint a lay got, and all lays that get one with it. */
  settle({ lay }: LoneLay, joint: Nm): void {
    this.joints.set(this.groups.get(lay)!, joint);
  }

  /** A lay's joint: stated or settled; null as long as it is left open. */
  jointOf({ lay }: LoneLay): Nm | null {
    const { min, max } = lay.joint;
    return min === max ? min : (this.joints.get(this.groups.get(lay)!) ?? null);
  }

  /** Whether a lay gets an open joint with any of these. */
  isJointOfOne(lone: LoneLay, others: readonly LoneLay[]): boolean {
    return this.jointOf(lone) === null && others.some(({ lay }) => this.isOneJoint(lone.lay, lay));
  }

  /** Whether nothing that a lay's place hangs from is left open but its own joint. */
  isPlaced(lone: LoneLay): boolean {
    return this.before(lone).every((lay) => this.isKnown(lay) || this.isOneJoint(lay, lone.lay));
  }

  /** What of its wall, with what is free where it stands there, a lay has at a width of joint. */
  regionAt(lone: LoneLay, wall: Wall, joint: Nm): Region {
    if (lone.isWhole) return regionOf(this.plan, wall, joint);
    return layRegion(this.plotAt(lone, wall, joint), joint);
  }

  /** Where the courses of a lay stand that is set already, as a start; null for any other. */
  upOf(lone: LoneLay, joint: Nm): UpStart | null {
    const stand = standOf(this.plotAt(lone, lone.wall, joint), joint);
    return stand && { kind: "joint", y: stand.from - joint + Math.floor(joint / 2) };
  }

  private plotAt(lone: LoneLay, wall: Wall, joint: Nm): LayPlot {
    // What is set stands where its courses were counted and measured, whatever is said of its start.
    const lay = lone.lay.set ? lone.lay : wall.lays[0]!;
    return { plan: this.plan, wall, lay, placed: this.placedBefore(lone, joint) };
  }

  /** The lays before one, with its own joint where they get one with it. */
  private placedBefore(lone: LoneLay, own: Nm): readonly Placed[] {
    const joints = this.before(lone).map((lay) =>
      this.isOneJoint(lay, lone.lay) ? own : this.widthOf(lay),
    );
    return this.placedWith(lone.of, joints);
  }

  /** As many of a wall's lays as there are joints, each with its own. */
  private placedWith(of: Wall, joints: readonly Nm[]): readonly Placed[] {
    const last = joints.length - 1;
    if (last < 0) return [];
    const ofWall = this.known.get(of) ?? new Map<string, readonly Placed[]>();
    this.known.set(of, ofWall);
    const key = joints.join();
    const known = ofWall.get(key);
    if (known) return known;
    const placed = this.placedWith(of, joints.slice(0, last));
    const [lay, joint] = [this.orderOf(of)[last]!, joints[last]!];
    const plot = { plan: this.plan, wall: of, lay, placed };
    const region = layRegion(plot, joint);
    const found = [...placed, placedBy(lay, { joint, region, stand: standOf(plot, joint) })];
    ofWall.set(key, found);
    return found;
  }

  /** The lays of its wall that have their places before one. */
  private before({ of, lay }: LoneLay): readonly Lay[] {
    const order = this.orderOf(of);
    return order.slice(0, order.indexOf(lay));
  }

  private orderOf(of: Wall): readonly Lay[] {
    const order = this.orders.get(of) ?? inPlacingOrder(of.lays);
    this.orders.set(of, order);
    return order;
  }

  private widthOf(lay: Lay): Nm {
    return this.joints.get(this.groups.get(lay)!) ?? lay.joint.min;
  }

  private isKnown(lay: Lay): boolean {
    return lay.joint.min === lay.joint.max || this.joints.has(this.groups.get(lay)!);
  }

  private isOneJoint(a: Lay, b: Lay): boolean {
    return this.groups.get(a) === this.groups.get(b);
  }
}
