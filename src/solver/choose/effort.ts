/** Counts looks at tiles, so that a search can be bounded the same way on every machine. */
export interface Effort {
  cells: number;
}

/**
 * What takes longer than a look at a tile that nothing cuts (about half a microsecond), in such looks:
 * to cut a tile really, to begin with a box of starts, to bound the starts of one direction.
 */
export const LOOKS = { parts: 1, cut: 120, box: 20, bound: 40 } as const;
