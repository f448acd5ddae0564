import type { CutPiece, RecutPieces } from "./comparison.js";

/** Two groups of pieces at one place, each now cut as the other was: a bond that moved by half a module. */
export type Exchange = readonly [RecutPieces, RecutPieces];

/** The groups that change places with one another, and those that don't. */
export function exchanges(groups: readonly RecutPieces[]): {
  readonly pairs: readonly Exchange[];
  readonly rest: readonly RecutPieces[];
} {
  const open = new Map(groups.map((group) => [keyOf(group.before, group.after), group]));
  const pairs: Exchange[] = [];
  const rest: RecutPieces[] = [];
  for (const group of groups) {
    const own = keyOf(group.before, group.after);
    if (!open.has(own)) continue;
    open.delete(own);
    const back = keyOf(group.after, group.before);
    const other = open.get(back);
    if (other) {
      open.delete(back);
      pairs.push([group, other]);
    } else rest.push(group);
  }
  return { pairs, rest };
}

function keyOf(from: CutPiece, to: CutPiece): string {
  return JSON.stringify([from, to]);
}
