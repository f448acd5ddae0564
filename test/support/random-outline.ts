import type { Corner } from "../../src/model/index.js";
import type { Random } from "./random.js";

/** Steps alone; a slope that joins two levels; or slopes anywhere, in the bottom too, which end at steps beyond them. */
export type OutlineKind = "steps" | "slope" | "risers";

/** Whole millimetres, anticlockwise, from 0 rightwards: a wall with steps in its bottom and its top, and slopes. */
export function randomOutline(random: Random, kind: OutlineKind): Corner[] {
  const places = [0, 1, 2, 3].map((i) => 300 * i + (i === 0 ? 0 : random.integer(-60, 60)));
  const [bottom, top] = [heights(random, -150, 150), heights(random, 700, 1400)];
  const along = (levels: readonly number[]): Corner[] =>
    places.slice(1).flatMap((x, i) => {
      const rise = kind === "risers" && random.integer(0, 2) > 0 ? random.integer(-120, 120) : 0;
      return [
        { x: places[i]!, y: levels[i]! },
        { x, y: levels[i]! + rise },
      ];
    });
  const [lower, upper] = [along(bottom), along(top)];
  // One slope between two levels: it joins them without a step at either end.
  if (kind === "slope") upper.splice(2, 2);
  return withoutStraight([...lower, ...upper.reverse()]);
}

function heights(random: Random, low: number, high: number): number[] {
  return [0, 1, 2].map(() => random.integer(low, high));
}

function withoutStraight(corners: readonly Corner[]): Corner[] {
  const distinct = corners.filter((corner, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return corner.x !== next.x || corner.y !== next.y;
  });
  return distinct.filter((b, i) => {
    const a = distinct[(i + distinct.length - 1) % distinct.length]!;
    const c = distinct[(i + 1) % distinct.length]!;
    return (b.x - a.x) * (c.y - b.y) !== (b.y - a.y) * (c.x - b.x);
  });
}
