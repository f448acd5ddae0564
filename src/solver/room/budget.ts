/**
 * How much a room is weighed with at most: counted, not timed, so that a plan has the same answer on
 * every machine.
 */
export const ROOM_MOST = {
  /** Looks at tiles (see LOOKS) for one ranking of the wishes. */
  cells: 300_000,
  /** Of these, looks for bounds at all joints. */
  bounds: 90_000,
  /** Joints that are bounded. */
  joints: 1_500,
  /** Ways of one direction of all walls together, at one joint or height; a wall has a share of them. */
  ways: 8_000,
  /** Heights of all walls together. */
  heights: 4_000,
  /** Places of one opening in one direction, for one start. */
  places: 64,
} as const;

/** A wall's share of what all walls have together; some are needed to find anything at all. */
export function shareOf(all: number, walls: number): number {
  return Math.max(64, Math.floor(all / walls));
}

/**
 * What takes longer than a look at a tile, in such looks: to make a field, to bound a start at each
 * obstacle, to find the critical places of an opening along one tile.
 */
export const ROOM_LOOKS = { field: 40, bound: 2, places: 4 } as const;
