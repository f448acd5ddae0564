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
  /** Ways of one direction of a wall, at one joint or height. */
  ways: 4_000,
} as const;

/** What takes longer than a look at a tile, in such looks: to make a field, to bound a start at each obstacle. */
export const ROOM_LOOKS = { field: 20, bound: 2 } as const;
