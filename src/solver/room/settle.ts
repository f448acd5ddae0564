import type { Nm } from "../../measure/index.js";
import type { AcrossStart, Lay, Opening, OwnStart, UpStart, Wall } from "../../model/index.js";

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
  const moved = movedOpenings(wall, { openings });
  return {
    ...wall,
    size: { ...wall.size, up: stop },
    openings,
    lays: wall.lays.map((lay) => settledLay(lay, moved)),
  };
}

/** A lay with what its start may speak of where that stands. */
export function settledLay(lay: Lay, moved: ReadonlyMap<Opening, Opening>): Lay {
  return {
    ...lay,
    across: lay.across && settledAcross(lay.across, moved),
    up: lay.up && settledUp(lay.up, moved),
  };
}

/** The openings of a wall, each with what it is on the wall once that is settled. */
export function movedOpenings(
  { openings }: Pick<Wall, "openings">,
  settled: Pick<Wall, "openings">,
): ReadonlyMap<Opening, Opening> {
  return new Map(openings.map((opening, i) => [opening, settled.openings[i]!]));
}

/** A start that may speak of an opening, of that opening where it stands. */
export function settledAcross<Start extends AcrossStart>(
  start: Start,
  moved: ReadonlyMap<Opening, Opening>,
): Start | OwnStart {
  if (!("centre" in start) || start.centre.on !== "opening") return start;
  const opening = moved.get(start.centre.opening) ?? start.centre.opening;
  return { ...start, centre: { on: "opening", opening } };
}

/** The same of a start up the wall. */
export function settledUp(start: UpStart, moved: ReadonlyMap<Opening, Opening>): UpStart {
  if (start.kind !== "at-opening") return start;
  return { ...start, opening: moved.get(start.opening) ?? start.opening };
}

/** Whether anything of a wall is left free besides its lay. */
export function isFree({ stop, openings }: Wall): boolean {
  return stop !== null || openings.some(({ free }) => free.x !== null || free.y !== null);
}
