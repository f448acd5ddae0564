/** Counts looks at tiles, so that a search can be bounded the same way on every machine. */
export interface Effort {
  cells: number;
  /** What cutting a round hole out of a tile counts besides the cut; nothing where it isn't said. */
  readonly round?: number;
  /** The part that a search has of what one may do; all of it where it isn't said. */
  readonly share?: number;
}
