import type { AcrossStart, Wall } from "../model/index.js";
import type { Chosen } from "./choose/index.js";
import type { KnownLays } from "./known-lays.js";
import type { LayPlot } from "./lay-region.js";
import { plotFor } from "./lay-wall.js";
import { type LoneLay, startAcross } from "./lone-lays.js";
import { movedOpenings, settledLay } from "./room/index.js";
import { asSettled } from "./start.js";

/** A lay as it is left to the search, with what is known of it by then. */
export function leftLay(known: KnownLays, lone: LoneLay): Wall {
  return withKnown(known, lone, lone.wall);
}

/** A lay that stands, with nothing left open but a joint. */
export function standingLay(known: KnownLays, lone: LoneLay): Wall {
  const { wall, chosen } = known.foundOf(lone) ?? { wall: lone.wall, chosen: null };
  const openings = wall.openings.map((each) => ({ ...each, free: { x: null, y: null } }));
  const moved = movedOpenings(wall, { openings });
  const [had] = wall.lays;
  const start = chosen ? { across: chosen.across, up: chosen.up } : {};
  const lay = settledLay({ ...had!, ...start }, moved);
  return withKnown(known, lone, { ...wall, stop: null, openings, lays: [lay] });
}

/**
 * With the joint that others got with it, where they have theirs. What is set stands where it was measured; what goes on
 * from another lay as that one is laid. As long as that isn't known, its courses alone are: it is weighed
 * as if it began with a full tile.
 */
function withKnown(known: KnownLays, lone: LoneLay, wall: Wall): Wall {
  const lay = wall.lays[0]!;
  const { grounds } = known;
  const joint = grounds.jointOf(lone);
  const width = joint === null ? lay.joint : { ...lay.joint, min: joint, max: joint };
  const up = lone.lay.set ? grounds.upOf(lone, known.jointOf(lone)) : lay.up;
  const isOwn = startAcross(lone) !== "follows";
  const across = isOwn ? lay.across : (acrossFrom(known, lone) ?? FULL_TILE);
  return { ...wall, lays: [{ ...lay, across, up, joint: width }] };
}

/** How a lay goes on from another one; null where that isn't known. */
function acrossFrom(known: KnownLays, lone: LoneLay): AcrossStart | null {
  const { of, lay } = lone;
  if (lay.goesOnFrom === null || !known.isAcrossKnown(lone)) return null;
  const { wall, starts } = known.settled(of);
  const startOf = (plot: LayPlot): Chosen => starts.get(plot.lay.name) ?? anyStart(plot);
  return plotFor(known.plan, wall, lay.name, startOf).lay.across;
}

const FULL_TILE = { kind: "full-tile", from: "left" } as const;

/** A start of a lay that nothing is chosen for; where it has its place doesn't hang from it. */
function anyStart({ lay }: LayPlot): Chosen {
  const up = lay.up ?? ({ kind: "full-course", from: "bottom" } as const);
  return { joint: lay.joint.min, across: asSettled(lay).across ?? FULL_TILE, up, choice: null };
}
