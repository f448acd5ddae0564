import { isCorner, type Wall } from "../../model/index.js";

/** Two walls that meet at a corner, by their numbers. */
export interface CornerPair {
  readonly a: number;
  readonly b: number;
  /** The end of `a` that is there; `b` has its other one there. */
  readonly end: "left" | "right";
}

/** Two lays that meet at a corner, each alone on its wall. */
export interface LayPair extends CornerPair {
  /** Whether both start where the search has them, so that the bond between them can be weighed. */
  readonly isBonded: boolean;
  /** Whether each stands beside most of the other: what a plan says of a bond that goes on speaks of such lays. */
  readonly isSayable: boolean;
}

/** The corners of walls that have one lay each. */
export function wholePairs(walls: readonly Wall[]): LayPair[] {
  return cornerPairs(walls).map((pair) => ({ ...pair, isBonded: true, isSayable: true }));
}

/** The corners at which two laid walls meet, each once. */
export function cornerPairs(walls: readonly Wall[]): CornerPair[] {
  const pairs = new Map<string, CornerPair>();
  walls.forEach((wall, i) => {
    for (const side of ["left", "right"] as const) {
      const { meets } = wall.edges[side];
      if (!isCorner(meets)) continue;
      const j = walls.findIndex(({ name }) => name === meets.wall);
      if (j < 0 || j === i || wall.lays.length === 0 || walls[j]!.lays.length === 0) continue;
      const [a, b] = [Math.min(i, j), Math.max(i, j)];
      // Two walls may meet at both their ends.
      const end = i === a ? side : side === "left" ? "right" : "left";
      pairs.set(`${a} ${b} ${end}`, { a, b, end });
    }
  });
  return [...pairs.values()];
}
