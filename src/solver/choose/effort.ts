/** Counts looks at tiles, so that a search can be bounded the same way on every machine. */
export interface Effort {
  cells: number;
}
