import type { Nm } from "../../measure/index.js";
import type { AcrossStart, Lay, Opening, UpStart, Wall } from "../../model/index.js";

/** Where what a wall leaves free comes to stand. */
export interface Settled {
  /** The height that its tile stops at. */
  readonly stop: Nm;
  /** The place of each opening, in their order. */
  readonly places: readonly Opening["at"][];
}

/** A wall as it is drawn: its height, its openings where they stand so far. */
export function settledOf({ size, openings }: Wall): Settled {
  return { stop: size.up, places: openings.map(({ at }) => at) };
}

/** The wall with its openings and its height where they come to stand; what is said of them goes with it. */
export function settle(wall: Wall, { stop, places }: Settled): Wall {
  const openings = wall.openings.map((opening, i) => ({ ...opening, at: places[i]! }));
  const moved = new Map(wall.openings.map((opening, i) => [opening, openings[i]!]));
  return {
    ...wall,
    size: { ...wall.size, up: stop },
    openings,
    lays: wall.lays.map((lay) => settledLay(lay, moved)),
  };
}

function settledLay(lay: Lay, moved: ReadonlyMap<Opening, Opening>): Lay {
  return {
    ...lay,
    across: lay.across && settledAcross(lay.across, moved),
    up: lay.up && settledUp(lay.up, moved),
  };
}

export function settledAcross(
  start: AcrossStart,
  moved: ReadonlyMap<Opening, Opening>,
): AcrossStart {
  if (!("centre" in start) || start.centre.on !== "opening") return start;
  const opening = moved.get(start.centre.opening) ?? start.centre.opening;
  return { ...start, centre: { on: "opening", opening } };
}

function settledUp(start: UpStart, moved: ReadonlyMap<Opening, Opening>): UpStart {
  if (start.kind !== "at-opening") return start;
  return { ...start, opening: moved.get(start.opening) ?? start.opening };
}

/** Whether anything of a wall is left free besides its lay. */
export function isFree({ stop, openings }: Wall): boolean {
  return stop !== null || openings.some(({ free }) => free.x !== null || free.y !== null);
}
