import type { Nm } from "../measure/index.js";
import type { Plan, Wall } from "../model/index.js";
import { LayGrounds } from "./lay-grounds.js";
import type { StandingLone } from "./lay-pairs.js";
import { innerSides } from "./lay-region.js";
import { isLeft, type LoneLay, startAcross } from "./lone-lays.js";
import { regionOf } from "./region.js";
import type { WallChosen } from "./room/index.js";
import { settleWall, type WallSettled } from "./wall-settled.js";

/** What is known of a room's lays while they are searched one round after the other. */
export class KnownLays {
  readonly grounds: LayGrounds;
  private readonly found = new Map<LoneLay, WallChosen>();

  constructor(
    readonly plan: Plan,
    readonly all: readonly LoneLay[],
  ) {
    this.grounds = new LayGrounds(plan, all);
  }

  /** Keeps what a search found for a lay, with the joint that it got. */
  settle(lone: LoneLay, found: WallChosen): void {
    this.found.set(lone, found);
    this.grounds.settle(lone, found.chosen.joint);
  }

  /** What was found for a lay; null before its round. */
  foundOf(lone: LoneLay): WallChosen | null {
    return this.found.get(lone) ?? null;
  }

  /** A wall where all that was found for its lays is settled. */
  settled(of: Wall): WallSettled {
    return settleWall(of, this.found);
  }

  /** Whether a lay has its place, and where its head joints go on from another's, those. */
  isReady(lone: LoneLay): boolean {
    if (!this.grounds.isPlaced(lone)) return false;
    const root = this.rootOf(lone);
    return root === lone || this.isAcrossKnown(root) || !isLeft(root);
  }

  /** Whether it is known at which height a lay's courses stand. */
  isStanding(lone: LoneLay): boolean {
    return this.found.has(lone) || !isLeft(lone) || startAcross(lone) === "follows";
  }

  /** Whether it is known where a lay's tiles stand across. */
  isAcrossKnown(lone: LoneLay): boolean {
    const root = this.rootOf(lone);
    return this.found.has(root) || startAcross(root) === "stated";
  }

  /** A lay's joint: the one that it has, or the narrowest. */
  jointOf(lone: LoneLay): Nm {
    return this.grounds.jointOf(lone) ?? lone.lay.joint.min;
  }

  /** Where a lay stands, by that joint. */
  standing(lone: LoneLay): StandingLone {
    const joint = this.jointOf(lone);
    const region = this.grounds.regionAt(lone, lone.wall, joint);
    return { lone, region, inner: innerSides(region, regionOf(this.plan, lone.of, joint)) };
  }

  /** The lay that the head joints of a lay go on from in the end; itself where it starts by itself. */
  private rootOf(lone: LoneLay): LoneLay {
    const { of, lay } = lone;
    const from = this.all.find((each) => each.of === of && each.lay.name === lay.goesOnFrom);
    return from ? this.rootOf(from) : lone;
  }
}
