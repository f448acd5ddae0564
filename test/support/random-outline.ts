import type { Corner } from "../../src/model/index.js";
import type { Random } from "./random.js";

/** Whole millimetres, anticlockwise, from 0 rightwards: a wall with steps in its bottom and its top, and slopes in its top. */
export function randomOutline(random: Random, slopes: boolean): Corner[] {
  const places = [0, 1, 2, 3].map((i) => 300 * i + (i === 0 ? 0 : random.integer(-60, 60)));
  const [bottom, top] = [heights(random, -150, 150), heights(random, 700, 1400)];
  const lower = places.slice(1).flatMap((x, i) => [
    { x: places[i]!, y: bottom[i]! },
    { x, y: bottom[i]! },
  ]);
  const upper = places.slice(1).flatMap((x, i) => [
    { x: places[i]!, y: top[i]! },
    { x, y: top[i]! },
  ]);
  // One slope between two levels: it joins them without a step at either end.
  if (slopes) upper.splice(2, 2);
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
