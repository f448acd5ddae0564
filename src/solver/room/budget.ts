/**
 * How much a room is weighed with at most: counted, not timed, so that a plan has the same answer on
 * every machine.
 */
export const ROOM_MOST = {
  /** Looks at tiles (see LOOKS) for one ranking of the wishes. */
  cells: 300_000,
  /** Of these, looks for bounds at all joints. */
  bounds: 240_000,
  /** Joints that are bounded. */
  joints: 1_500,
  /** Heights of all walls together. */
  heights: 4_000,
  /** Joints that are critical for what may move alone. */
  more: 200,
  /** Starts across of one wall at one joint. */
  origins: 4_000,
  /** Starts of one wall, with those that come to it round corners where the bond is to go on. */
  carried: 600,
  /** Heights to stop at, for one height of the courses. */
  stops: 64,
  /** Places of one opening in one direction, for one start. */
  places: 256,
  /** Ways for openings that may meet the same tiles, together. */
  together: 4_000,
} as const;

/** A wall's share of what all walls have together; some are needed to find anything at all. */
export function shareOf(all: number, walls: number): number {
  return Math.max(64, Math.floor(all / walls));
}

/**
 * What takes longer than a look at a tile, in such looks: to make a field, to bound a start at each
 * obstacle, to find the critical places of an opening along one tile, to compare the bonds of two walls at their corner, to
 * rank a height among others, or a start, to cut a round hole out of a tile besides cutting that.
 */
export const ROOM_LOOKS = {
  field: 40,
  bound: 2,
  places: 4,
  corner: 1,
  height: 4,
  start: 1,
  round: 500,
} as const;
