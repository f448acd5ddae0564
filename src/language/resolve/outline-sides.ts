import type { Nm } from "../../measure/index.js";
import type { Corner, Side } from "../../model/index.js";
import { levelSide, type LevelSide } from "./level-side.js";

/** An outline as the solver holds it: each side a line, and the steps that leave rectangles out. */
export interface OutlineSides {
  readonly left: readonly Corner[];
  readonly right: readonly Corner[];
  readonly bottom: LevelSide;
  readonly top: LevelSide;
}

/** Which side an edge of an anticlockwise outline belongs to. */
type Facing = Side;

/** A slope that rises more than this often as far as it runs is a left or right side. */
const STEEP = 2;

/**
 * The sides of an anticlockwise outline, or the number of the corner at which it can't be held: where it
 * overhangs, so that a level line or a plumb line enters it twice. A slope is of the bottom or the top unless it is steeper than 2 up on 1 across
 * (common practice: a ceiling that slopes is one up to there).
 */
export function sidesOfOutline(corners: readonly Corner[]): OutlineSides | number {
  const count = corners.length;
  const at = (i: number): Corner => corners[i % count]!;
  const facing = corners.map((corner, i) => facingOf(corner, at(i + 1)));
  const first = startOf(corners, facing);
  const turn = (i: number): Facing => facing[(first + i) % count]!;
  // The numbers, from `first` on, at which the right side, the top and the left side begin.
  const level = (side: "bottom" | "top", from: number): number => {
    let to = from;
    for (let i = from; i < count && turn(i) !== opposite(side); i++) {
      if (turn(i) === side) to = i + 1;
    }
    return to;
  };
  const upright = (side: "left" | "right", from: number): number => {
    let to = from;
    while (to < count && turn(to) === side) to++;
    return to;
  };
  const rightFrom = level("bottom", 0);
  const topFrom = upright("right", rightFrom);
  const leftFrom = level("top", topFrom);
  const end = upright("left", leftFrom);
  if (end < count) return (first + end) % count;
  const path = (from: number, to: number): Corner[] =>
    Array.from({ length: to - from + 1 }, (_, i) => at(first + from + i));
  const tooFar = (from: number, to: number, way: 1 | -1): number | null => {
    for (let i = from; i < to; i++) {
      const run = (at(first + i + 1).x - at(first + i).x) * way;
      if (run < 0) return (first + i) % count;
    }
    return null;
  };
  const overhang = tooFar(0, rightFrom, 1) ?? tooFar(topFrom, leftFrom, -1);
  if (overhang !== null) return overhang;
  const reach = { from: low(corners, "x"), to: high(corners, "x") };
  const bottom = levelSide(path(0, rightFrom), "bottom", reach);
  const top = levelSide(path(topFrom, leftFrom).reverse(), "top", reach);
  return {
    left: path(leftFrom, count).reverse(),
    right: path(rightFrom, topFrom),
    bottom,
    top,
  };
}

function facingOf(from: Corner, to: Corner): Facing {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (Math.abs(dy) <= STEEP * Math.abs(dx)) return dx > 0 ? "bottom" : "top";
  return dy > 0 ? "right" : "left";
}

function opposite(side: "bottom" | "top"): Facing {
  return side === "bottom" ? "top" : "bottom";
}

/** The first edge of the bottom: behind the left side, or at the lowest corner where there is no bottom. */
function startOf(corners: readonly Corner[], facing: readonly Facing[]): number {
  const count = corners.length;
  const lowest = corners.reduce((best, { y }, i) => (y < corners[best]!.y ? i : best), 0);
  if (!facing.includes("bottom")) return lowest;
  const isTop = (i: number) => facing[(i + count) % count] === "top";
  const isFirst = (i: number): boolean => {
    if (facing[i] !== "bottom") return false;
    for (let back = 1; back < count; back++) {
      if (isTop(i - back)) return true;
      if (facing[(i - back + count) % count] === "bottom") return false;
    }
    return true;
  };
  const starts = corners.map((_, i) => i).filter(isFirst);
  // A steep slope down may lie between edges of the bottom; without a top the left side comes before it.
  return starts.length > 0 ? starts[0]! : lowest;
}

function low(corners: readonly Corner[], axis: "x" | "y"): Nm {
  return corners.reduce((least, corner) => Math.min(least, corner[axis]), Infinity);
}

function high(corners: readonly Corner[], axis: "x" | "y"): Nm {
  return corners.reduce((most, corner) => Math.max(most, corner[axis]), -Infinity);
}
