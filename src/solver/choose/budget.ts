/**
 * How much one lay is weighed with at most. It is counted, not timed, so that a plan has the same
 * answer on every machine; all of it comes to about a tenth of a second.
 */
export const MOST = {
  joints: 1_500,
  /** Critical starts of one direction at one joint. */
  starts: 2_000,
  /** Looks at an obstacle when starts are bounded, over all joints. */
  looks: 1_000_000,
  /** Looks at tiles (see LOOKS) in all. */
  cells: 110_000,
  /** Of these, looks in starts that straight edges make critical, where all others are looked through too. */
  walking: { atOneJoint: 15_000, atMany: 50_000 },
} as const;

/**
 * What takes longer than a look at a tile that nothing cuts (about half a microsecond), in such looks:
 * to cut a tile really, to begin with a box of starts, to bound the starts of one direction.
 */
export const LOOKS = { parts: 1, cut: 120, box: 20, bound: 40 } as const;

/** The most named starts of one direction that are weighed before all others. */
export const MOST_NAMED = 12;

/** At most so many of the places, evenly taken out of all. */
export function thinned<T>(places: readonly T[], most: number): readonly T[] {
  if (places.length <= most) return places;
  return Array.from({ length: most }, (_, i) => {
    return places[Math.round((i * (places.length - 1)) / (most - 1))]!;
  });
}
