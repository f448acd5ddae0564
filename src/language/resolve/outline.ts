import type { Nm } from "../../measure/index.js";
import { formatLength } from "../../measure/index.js";
import type { Corner } from "../../model/index.js";
import type { OutlineStatement, WrittenCorner } from "../syntax.js";
import { lengthOf } from "./lengths.js";
import { type OutlineSides, sidesOfOutline } from "./outline-sides.js";
import type { Scope } from "./scope.js";

/** A wall with more corners is a mistake, and comparing each edge with each takes time. */
const MOST_CORNERS = 100;

/** A wall's outline: its corners, anticlockwise, and the sides that the solver works with. */
export interface Outline {
  readonly corners: readonly Corner[];
  readonly sides: OutlineSides;
}

/** The outline that a wall states; null, and told at its place, where it can't stand. */
export function resolveOutline(
  { corners: written, head }: OutlineStatement,
  scope: Scope,
  wall: string,
): Outline | null {
  const tell = (at: { start: number; end: number }, message: string): null => {
    scope.report.tell("plan/outline", at, message, { wall });
    return null;
  };
  if (written.length < 3 || written.length > MOST_CORNERS) {
    const found = `found ${written.length} ${written.length === 1 ? "corner" : "corners"}`;
    return tell(head, `${found}, wanted an outline of 3 to ${MOST_CORNERS}`);
  }
  const places = written.map((corner) => placeOf(corner, scope, wall));
  const stated = places.filter((place) => place !== null);
  if (stated.length < places.length) return null;
  const left = Math.min(...stated.map(({ x }) => x));
  if (left !== 0) {
    const found = formatLength(left, scope.units);
    return tell(head, `found an outline from ${found} on, wanted its left end at 0`);
  }
  const crossing = firstCrossing(stated);
  if (crossing !== null) {
    return tell(
      written[crossing]!,
      "found an outline that crosses or touches itself, wanted it clear of itself",
    );
  }
  const area = doubleArea(stated);
  if (area === 0n) return tell(head, "found an outline round nothing, wanted one round a wall");
  const isTurned = area < 0n;
  const turned = withoutStraight(isTurned ? [...stated].reverse() : stated);
  const sides = sidesOfOutline(turned);
  if (typeof sides !== "number") return { corners: turned, sides };
  const { x, y } = turned[sides] ?? turned[0]!;
  const at = written[stated.findIndex((place) => place.x === x && place.y === y)]!;
  return tell(
    at,
    "found an overhang in the outline, wanted a side that goes on rightwards or upwards",
  );
}

/** A rectangle on a wall. */
export interface Rectangle {
  readonly left: Nm;
  readonly bottom: Nm;
  readonly right: Nm;
  readonly top: Nm;
}

/** Whether a slope of an outline runs through a rectangle; exact. */
export function slopeCuts(corners: readonly Corner[], box: Rectangle): boolean {
  const of = [
    { x: box.left, y: box.bottom },
    { x: box.right, y: box.bottom },
    { x: box.right, y: box.top },
    { x: box.left, y: box.top },
  ];
  return corners.some((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    if (from.x === to.x || from.y === to.y) return false;
    const isNear =
      Math.min(from.x, to.x) < box.right &&
      Math.max(from.x, to.x) > box.left &&
      Math.min(from.y, to.y) < box.top &&
      Math.max(from.y, to.y) > box.bottom;
    const turns = of.map((corner) => turnOf(from, to, corner));
    return isNear && turns.includes(1) && turns.includes(-1);
  });
}

/** Whether a level or an upright edge of an outline runs through a rectangle. */
export function stepCuts(corners: readonly Corner[], box: Rectangle): boolean {
  return corners.some((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    if (from.x !== to.x && from.y !== to.y) return false;
    const isThrough = (one: Nm, other: Nm, low: Nm, high: Nm): boolean =>
      Math.min(one, other) < high && Math.max(one, other) > low;
    return (
      isThrough(from.x, to.x, box.left, box.right) && isThrough(from.y, to.y, box.bottom, box.top)
    );
  });
}

/** Whether a rectangle lies where an upright step leaves no wall: off it, and no slope beside it. */
export function isInStep(corners: readonly Corner[], box: Rectangle): boolean {
  const isBesideSlope = corners.some((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    const [low, high] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
    return from.x !== to.x && from.y !== to.y && low < box.right && high > box.left;
  });
  return !isBesideSlope && !stepCuts(corners, box) && !holdsMiddle(corners, box);
}

/** Whether the middle of a rectangle lies in an outline; a middle on an edge may fall either way. */
export function holdsMiddle(corners: readonly Corner[], box: Rectangle): boolean {
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  let isIn = false;
  corners.forEach((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    if (from.y > middle.y === to.y > middle.y) return;
    const x = from.x + ((to.x - from.x) * (middle.y - from.y)) / (to.y - from.y);
    if (x > middle.x) isIn = !isIn;
  });
  return isIn;
}

function placeOf({ x, y }: WrittenCorner, scope: Scope, wall: string): Corner | null {
  const across = lengthOf(x, "any", scope, wall);
  const up = lengthOf(y, "any", scope, wall);
  return across === null || up === null ? null : { x: across, y: up };
}

/** The end of the first edge that meets another one than its neighbours, or folds back on one of them. */
function firstCrossing(corners: readonly Corner[]): number | null {
  const count = corners.length;
  const at = (i: number): Corner => corners[i % count]!;
  for (let i = 0; i < count; i++) {
    if (isFold(at(i), at(i + 1), at(i + 2))) return (i + 1) % count;
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      if (meet(at(i), at(i + 1), at(j), at(j + 1))) return (j + 1) % count;
    }
  }
  return null;
}

function isFold(a: Corner, b: Corner, c: Corner): boolean {
  if (a.x === b.x && a.y === b.y) return true;
  const along = BigInt(b.x - a.x) * BigInt(c.x - b.x) + BigInt(b.y - a.y) * BigInt(c.y - b.y);
  return turnOf(a, b, c) === 0 && along < 0n;
}

function meet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const [abc, abd, cda, cdb] = [turnOf(a, b, c), turnOf(a, b, d), turnOf(c, d, a), turnOf(c, d, b)];
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && isWithin(a, b, c)) ||
    (abd === 0 && isWithin(a, b, d)) ||
    (cda === 0 && isWithin(c, d, a)) ||
    (cdb === 0 && isWithin(c, d, b))
  );
}

/** Whether a corner on the line of two others lies between them. */
function isWithin(a: Corner, b: Corner, c: Corner): boolean {
  const between = (p: Nm, q: Nm, r: Nm) => Math.min(p, q) <= r && r <= Math.max(p, q);
  return between(a.x, b.x, c.x) && between(a.y, b.y, c.y);
}

/** 1 where c lies left of the way from a to b, -1 right of it, 0 on its line; exact. */
function turnOf(a: Corner, b: Corner, c: Corner): number {
  const turn = BigInt(b.x - a.x) * BigInt(c.y - a.y) - BigInt(b.y - a.y) * BigInt(c.x - a.x);
  return turn > 0n ? 1 : turn < 0n ? -1 : 0;
}

function doubleArea(corners: readonly Corner[]): bigint {
  return corners.reduce((sum, { x, y }, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return sum + BigInt(x) * BigInt(next.y) - BigInt(next.x) * BigInt(y);
  }, 0n);
}

/** The corners that are any: none on a straight run. */
function withoutStraight(corners: readonly Corner[]): Corner[] {
  const count = corners.length;
  return corners.filter(
    (corner, i) =>
      turnOf(corners[(i + count - 1) % count]!, corner, corners[(i + 1) % count]!) !== 0,
  );
}
