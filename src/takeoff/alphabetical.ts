/** Orders words of plain letters; what knows a language's own order takes 7 ms to be loaded by Node. */
export function alphabetical(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
