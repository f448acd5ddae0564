import type { Lay, Plan, Wall } from "../model/index.js";
import { type FreeLays, freeLays } from "./free-lays.js";
import { inCourseOrder } from "./lay-order.js";
import type { Unsettled } from "./solved.js";
import { isFree, movedOpenings, settledLay } from "./room/index.js";

/** A lay of a wall as a wall of a room that has this lay alone. */
export interface LoneLay {
  /** The wall and the lay as the plan has them. */
  readonly of: Wall;
  readonly lay: Lay;
  /** The wall with this lay alone, and nothing free but what the lay settles. */
  readonly wall: Wall;
  readonly own: OwnFree;
  /** Whether it has all of its wall. */
  readonly isWhole: boolean;
}

/** What a lay has to settle besides its start: the numbers of openings, and whether its top is free. */
export interface OwnFree {
  readonly openings: readonly number[];
  readonly stop: boolean;
}

/** The lays of a wall, each alone. */
export interface LoneLays {
  /** From the bottom up, as they stand on each other. */
  readonly lays: readonly LoneLay[];
  /** What of the wall no lay alone can settle. */
  readonly unsettled: readonly Unsettled[];
}

/** Whether a wall has one lay, which has all of it. */
export function isLaidWhole({ lays }: Wall): boolean {
  return lays.length === 1 && lays[0]!.area === null;
}

/** The lays of a wall, each as a wall that has it alone. */
export function loneLays(plan: Plan, of: Wall): LoneLays {
  if (isLaidWhole(of)) {
    const own = { openings: of.openings.map((_, i) => i), stop: true };
    return {
      lays: [{ of, lay: of.lays[0]!, wall: of, own, isWhole: true }],
      unsettled: [],
    };
  }
  const free = isFree(of) ? freeLays(plan, of) : NOTHING_FREE;
  const lays = inCourseOrder(of).map(({ lay }): LoneLay => {
    const own = { openings: free.openings.get(lay.name) ?? [], stop: free.stop === lay.name };
    return { of, lay, wall: wallOfLay(of, lay, own), own, isWhole: false };
  });
  return { lays, unsettled: free.unsettled };
}

const NOTHING_FREE: FreeLays = { openings: new Map(), stop: null, unsettled: [] };

/** What is known of where a lay's tiles stand across before it is searched: nothing, what is stated, or that it goes on from another lay. */
export function startAcross({ lay }: LoneLay): "open" | "stated" | "follows" {
  const { across, goesOnFrom, set } = lay;
  if (goesOnFrom !== null) return "follows";
  if (!across || "wall" in across) return set ? "follows" : "open";
  return "stated";
}

/** Whether anything of a lay is left to the room's search. */
export function isLeft(lone: LoneLay): boolean {
  const { lay, own, wall } = lone;
  if (lone.isWhole || own.stop || own.openings.length > 0) return true;
  const { up, joint } = wall.lays[0]!;
  return startAcross(lone) === "open" || (up === null && lay.set === null) || joint.min < joint.max;
}

/** The wall as if it had this lay alone, and nothing free but what lies in it. */
function wallOfLay(wall: Wall, lay: Lay, own: OwnFree): Wall {
  const openings = wall.openings.map((opening, i) =>
    own.openings.includes(i) ? opening : { ...opening, free: { x: null, y: null } },
  );
  const lays = [settledLay(lay, movedOpenings(wall, { openings }))];
  return { ...wall, stop: own.stop ? wall.stop : null, openings, lays };
}
