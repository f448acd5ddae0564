import type { Nm } from "../measure/index.js";
import type { AcrossStart, Plan, Wall, Wish } from "../model/index.js";
import type { Chosen } from "./choose/index.js";
import { LayGrounds } from "./lay-grounds.js";
import { layPairs, type StandingLone } from "./lay-pairs.js";
import { innerSides, type LayPlot } from "./lay-region.js";
import { plotFor } from "./lay-wall.js";
import { isLeft, type LoneLay, loneLays, startAcross } from "./lone-lays.js";
import { regionOf } from "./region.js";
import {
  isFree,
  layRoom,
  movedOpenings,
  settle,
  settledAcross,
  settledLay,
  settledUp,
  type WallChosen,
} from "./room/index.js";
import { placeOverEdges } from "./place-over-edges.js";
import type { RoomChoice, Unsettled } from "./solved.js";
import { asSettled } from "./start.js";

/** A wall with what it leaves free settled, and how its lays start, by their names. */
export interface WallSettled {
  readonly wall: Wall;
  readonly starts: ReadonlyMap<string, Chosen>;
}

/** What a room's search comes to. */
export interface LaysSettled {
  /** By the walls as the plan has them. */
  readonly walls: ReadonlyMap<Wall, WallSettled>;
  readonly room: RoomChoice;
}

/**
 * Chooses for the lays of these walls together, each as a wall of the room that has it alone, and settles what they leave
 * free. A lay that begins past one of which the joint is left open waits until that one has its joint: it is
 * chosen in a later round, beside those that are laid by then. `share` is what part of all looks may be taken.
 */
export function settleLays(
  plan: Plan,
  walls: readonly Wall[],
  wishes: readonly Wish[],
  share = 1,
): LaysSettled {
  const lone = walls.map((wall) => loneLays(plan, wall));
  const spans = lone
    .flatMap(({ unsettled }) => unsettled)
    .filter(({ opening, why }) => opening !== null && why === "spans");
  if (spans.length === 0) return settleOnce(plan, walls, wishes, share);
  const first = settleOnce(plan, walls, wishes, share / 2);
  // What lies over the edge between lays is placed for the tiles of all of them, and their starts are chosen again for it.
  const placed = walls.map((wall) => {
    const names = spans.filter((each) => each.wall === wall.name).map(({ opening }) => opening!);
    return placeOverEdges(plan, { asked: wall, ...first.walls.get(wall)! }, names, wishes);
  });
  const again = settleOnce(
    plan,
    placed.map(({ wall }) => wall),
    wishes,
    share / 2,
  );
  const isPlaced = ({ wall, opening, why }: Unsettled) =>
    why === "spans" &&
    placed.some((each) => each.wall.name === wall && each.placed.includes(opening ?? ""));
  return {
    walls: new Map(walls.map((wall, i) => [wall, again.walls.get(placed[i]!.wall)!])),
    room: {
      weighed: first.room.weighed + again.room.weighed,
      capped: first.room.capped || again.room.capped || placed.some(({ capped }) => capped),
      unsettled: again.room.unsettled.filter((each) => !isPlaced(each)),
    },
  };
}

function settleOnce(
  plan: Plan,
  walls: readonly Wall[],
  wishes: readonly Wish[],
  share: number,
): LaysSettled {
  const lone = walls.map((wall) => loneLays(plan, wall));
  const rounds = new Rounds(
    plan,
    wishes,
    lone.flatMap(({ lays }) => lays),
    share,
  );
  rounds.run();
  const settled = walls.map((wall) => [wall, rounds.settled(wall)] as const);
  const unsettled = lone.flatMap((each) => each.unsettled);
  return { walls: new Map(settled), room: { ...rounds.room, unsettled } };
}

class Rounds {
  room: Pick<RoomChoice, "weighed" | "capped"> = { weighed: 0, capped: false };
  private readonly grounds: LayGrounds;
  private readonly found = new Map<LoneLay, WallChosen>();

  constructor(
    private readonly plan: Plan,
    private readonly wishes: readonly Wish[],
    private readonly all: readonly LoneLay[],
    private readonly share: number,
  ) {
    this.grounds = new LayGrounds(plan, all);
  }

  run(): void {
    let waiting = this.all.filter(isLeft);
    while (waiting.length > 0) {
      const ready = waiting.filter((lone) => this.isReady(lone));
      this.search(ready);
      waiting = waiting.filter((lone) => !this.found.has(lone));
    }
  }

  /** A wall where all of it is settled: starts speak of openings where they stand now. */
  settled(of: Wall): WallSettled {
    const lays = this.all.filter((lone) => lone.of === of && this.found.has(lone));
    let { up: stop } = of.size;
    const places = of.openings.map(({ at }) => at);
    for (const { own, wall } of lays.map((lone) => ({ ...lone, ...this.found.get(lone)! }))) {
      if (own.stop) stop = wall.size.up;
      for (const i of own.openings) places[i] = wall.openings[i]!.at;
    }
    const standing = isFree(of) ? settle(of, { stop, places }) : of;
    const starts = lays.map((lone) => {
      const { wall, chosen } = this.found.get(lone)!;
      return [lone.lay.name, follow(chosen, wall, standing)] as const;
    });
    return { wall: standing, starts: new Map(starts) };
  }

  /** Whether a lay has its place, and where its head joints go on from another's, those. */
  private isReady(lone: LoneLay): boolean {
    if (!this.grounds.isPlaced(lone)) return false;
    const root = this.rootOf(lone);
    return root === lone || this.isAcrossKnown(root) || !isLeft(root);
  }

  /** Searches the lays that are ready, beside those that have their place. */
  private search(ready: readonly LoneLay[]): void {
    const pairs = layPairs(
      this.all.map((lone) => this.standing(lone)),
      (lone) => ready.includes(lone) || this.isAcrossKnown(lone),
    );
    const isBeside = (i: number) =>
      pairs.some(({ a, b }) => (a === i || b === i) && ready.includes(this.all[a + b - i]!));
    const isIn = this.all.map(
      (lone, i) =>
        ready.includes(lone) ||
        (this.grounds.isPlaced(lone) &&
          (this.grounds.isJointOfOne(lone, ready) || (this.isStanding(lone) && isBeside(i)))),
    );
    const lays = this.all.filter((_, i) => isIn[i]);
    const walls = lays.map((lone) => (ready.includes(lone) ? this.left(lone) : this.laid(lone)));
    const numbers = new Map(lays.map((lone, i) => [this.all.indexOf(lone), i]));
    const byLay = new Map(lays.map((lone) => [keyOf(lone.of.name, lone.lay.name), lone]));
    const { walls: found, room } = layRoom(this.plan, walls, this.wishes, {
      tiledAt: (wall, joint) =>
        this.grounds.regionAt(byLay.get(keyOf(wall.name, wall.lays[0]!.name))!, wall, joint),
      pairs: pairs
        .filter(({ a, b }) => isIn[a] && isIn[b])
        .map((pair) => ({ ...pair, a: numbers.get(pair.a)!, b: numbers.get(pair.b)! })),
      share: this.share,
    });
    lays.forEach((lone, i) => {
      if (!ready.includes(lone)) return;
      const laid = found.get(walls[i]!)!;
      this.found.set(lone, laid);
      this.grounds.settle(lone, laid.chosen.joint);
    });
    this.room = {
      weighed: this.room.weighed + room.weighed,
      capped: this.room.capped || room.capped,
    };
  }

  /** Where a lay stands, by the joint that it has, or the narrowest. */
  private standing(lone: LoneLay): StandingLone {
    const joint = this.jointOf(lone);
    const region = this.grounds.regionAt(lone, lone.wall, joint);
    return { lone, region, inner: innerSides(region, regionOf(this.plan, lone.of, joint)) };
  }

  private jointOf(lone: LoneLay): Nm {
    return this.grounds.jointOf(lone) ?? lone.lay.joint.min;
  }

  /** Whether it is known at which height a lay's courses stand. */
  private isStanding(lone: LoneLay): boolean {
    return this.found.has(lone) || !isLeft(lone) || startAcross(lone) === "follows";
  }

  /** Whether it is known where a lay's tiles stand across. */
  private isAcrossKnown(lone: LoneLay): boolean {
    const root = this.rootOf(lone);
    return this.found.has(root) || startAcross(root) === "stated";
  }

  /** The lay that the head joints of a lay go on from in the end; itself where it starts by itself. */
  private rootOf(lone: LoneLay): LoneLay {
    const { of, lay } = lone;
    const from = this.all.find((each) => each.of === of && each.lay.name === lay.goesOnFrom);
    return from ? this.rootOf(from) : lone;
  }

  /** A lay as it is left to the search. */
  private left(lone: LoneLay): Wall {
    return this.withKnown(lone, lone.wall);
  }

  /** A lay that stands, with nothing left open but a joint. */
  private laid(lone: LoneLay): Wall {
    const { wall, chosen } = this.found.get(lone) ?? { wall: lone.wall, chosen: null };
    const openings = wall.openings.map((each) => ({ ...each, free: { x: null, y: null } }));
    const moved = movedOpenings(wall, { openings });
    const [had] = wall.lays;
    const start = chosen ? { across: chosen.across, up: chosen.up } : {};
    const lay = settledLay({ ...had!, ...start }, moved);
    return this.withKnown(lone, { ...wall, stop: null, openings, lays: [lay] });
  }

  /**
   * With the joint that others got with it, where they have theirs. What is set stands where it was measured; what goes on
   * from another lay as that one is laid. As long as that isn't known, its courses alone are: it is weighed
   * as if it began with a full tile.
   */
  private withKnown(lone: LoneLay, wall: Wall): Wall {
    const lay = wall.lays[0]!;
    const joint = this.grounds.jointOf(lone);
    const width = joint === null ? lay.joint : { ...lay.joint, min: joint, max: joint };
    const up = lone.lay.set ? this.grounds.upOf(lone, this.jointOf(lone)) : lay.up;
    const isOwn = startAcross(lone) !== "follows";
    const across = isOwn ? lay.across : (this.acrossFrom(lone) ?? FULL_TILE);
    return { ...wall, lays: [{ ...lay, across, up, joint: width }] };
  }

  /** How a lay goes on from another one; null where that isn't known. */
  private acrossFrom(lone: LoneLay): AcrossStart | null {
    const { of, lay } = lone;
    if (lay.goesOnFrom === null || !this.isAcrossKnown(lone)) return null;
    const { wall, starts } = this.settled(of);
    const plot = plotFor(
      this.plan,
      wall,
      lay.name,
      (at) => starts.get(at.lay.name) ?? anyStart(at),
    );
    return plot.lay.across;
  }
}

const FULL_TILE = { kind: "full-tile", from: "left" } as const;

/** A start of a lay that nothing is chosen for; where it has its place doesn't hang from it. */
function anyStart({ lay }: LayPlot): Chosen {
  const up = lay.up ?? ({ kind: "full-course", from: "bottom" } as const);
  return { joint: lay.joint.min, across: asSettled(lay).across ?? FULL_TILE, up, choice: null };
}

function keyOf(wall: string, lay: string): string {
  return `${wall}/${lay}`;
}

function follow(chosen: Chosen, from: Wall, to: Wall): Chosen {
  const openings = movedOpenings(from, to);
  return {
    ...chosen,
    across: settledAcross(chosen.across, openings),
    up: settledUp(chosen.up, openings),
  };
}
