import type { Nm } from "../measure/index.js";
import type { Side } from "../model/index.js";
import type { Box } from "./box.js";
import { type Chain, rangeBetween, valueAfter, valueAt } from "./chain.js";
import { tidyRing } from "./clip/ring.js";
import type { Ring } from "./shape.js";
import type { Region } from "./solved.js";

/** A region's four sides. */
export type Sides = Pick<Region, Side>;

/** A measured side as it runs through a box, or past it. */
export interface Slope {
  readonly side: Side;
  /** Its corners rightwards or upwards, over the box's whole reach or more: x and y. */
  readonly line: readonly (readonly [Nm, Nm])[];
}

/**
 * The measured sides that run through a box. Their lines have the side's own corners, within the box
 * and next to it, so that whatever is cut by them is rounded once.
 */
export function slopesAcross(box: Box, region: Sides): Slope[] {
  const { left: l, bottom: b, right: r, top: t } = box;
  const { left, bottom, right, top } = region;
  const slopes: Slope[] = [];
  if (isBent(bottom) && rangeBetween(bottom, l, r).high > b)
    slopes.push(slopeOf("bottom", bottom, box));
  if (isBent(top) && rangeBetween(top, l, r).low < t) slopes.push(slopeOf("top", top, box));
  if (isBent(left) && rangeBetween(left, b, t).high > l) slopes.push(slopeOf("left", left, box));
  if (isBent(right) && rangeBetween(right, b, t).low < r) slopes.push(slopeOf("right", right, box));
  return slopes;
}

/** Whether a side was measured at more than one place: any other is level or upright, and has no slope. */
function isBent({ at }: Chain): boolean {
  return at.length > 1;
}

/** A measured side as it runs past a box, with its own corners. */
export function slopeOf(side: Side, chain: Chain, box: Box): Slope {
  return turned(side, box, (from, to) => cornersRound(chain, from, to));
}

/** A measured side just as far as the box reaches, its ends rounded to the nanometre. */
export function slopeWithin(side: Side, chain: Chain, box: Box): Slope {
  return turned(side, box, (from, to) => pointsBetween(chain, from, to));
}

function turned(
  side: Side,
  { left, bottom, right, top }: Box,
  pointsOf: (from: Nm, to: Nm) => (readonly [Nm, Nm])[],
): Slope {
  if (side === "bottom" || side === "top") return { side, line: pointsOf(left, right) };
  return { side, line: pointsOf(bottom, top).map(([y, x]) => [x, y] as const) };
}

/** What lies beyond a slope, as far as the box reaches, as an anticlockwise ring. */
export function beyond(box: Box, { side, line }: Slope): Ring {
  const [[x0, y0], [x1, y1]] = [line[0]!, line.at(-1)!];
  switch (side) {
    case "bottom": {
      const low = Math.min(box.bottom, ...line.map(([, y]) => y)) - 1;
      return [x0, low, x1, low, ...backAlong(line)];
    }
    case "top": {
      const high = Math.max(box.top, ...line.map(([, y]) => y)) + 1;
      return [...line.flat(), x1, high, x0, high];
    }
    case "left": {
      const low = Math.min(box.left, ...line.map(([x]) => x)) - 1;
      return [...line.flat(), low, y1, low, y0];
    }
    case "right": {
      const high = Math.max(box.right, ...line.map(([x]) => x)) + 1;
      return [...backAlong(line), high, y0, high, y1];
    }
  }
}

function backAlong(line: Slope["line"]): Nm[] {
  return [...line].reverse().flat();
}

/**
 * The outline of a box scribed to one slope that stays inside it from end to end (the slope just as
 * far as the box reaches); null for any other slope. The plain case of `subtract`, kept for its
 * speed: most scribed pieces are this.
 */
export function scribed(box: Box, { side, line }: Slope): Ring | null {
  const { left: l, bottom: b, right: r, top: t } = box;
  switch (side) {
    case "bottom":
      return line.every(([, y]) => y >= b && y < t) ? tidyRing([...line.flat(), r, t, l, t]) : null;
    case "top":
      return line.every(([, y]) => y > b && y <= t)
        ? tidyRing([l, b, r, b, ...backAlong(line)])
        : null;
    case "left":
      return line.every(([x]) => x >= l && x < r)
        ? tidyRing([r, b, r, t, ...backAlong(line)])
        : null;
    case "right":
      return line.every(([x]) => x > l && x <= r) ? tidyRing([l, b, ...line.flat(), l, t]) : null;
  }
}

/** The chain's points from one place to another, ends included: place and value. */
function pointsBetween(chain: Chain, from: Nm, to: Nm): (readonly [Nm, Nm])[] {
  const points: (readonly [Nm, Nm])[] = [[from, valueAfter(chain, from)]];
  chain.at.forEach((at, i) => {
    if (at > from && at < to) points.push([at, chain.value[i]!]);
  });
  points.push([to, valueAt(chain, to)]);
  return points;
}

/** The chain's corners from the last one before a stretch to the first one after it. */
function cornersRound({ at, value }: Chain, from: Nm, to: Nm): (readonly [Nm, Nm])[] {
  const last = at.length - 1;
  let first = 0;
  while (first < last && at[first + 1]! <= from) first++;
  let final = last;
  while (final > 0 && at[final - 1]! >= to) final--;
  const points: (readonly [Nm, Nm])[] = [];
  if (at[first]! > from) points.push([from, value[first]!]);
  for (let i = first; i <= final; i++) points.push([at[i]!, value[i]!]);
  if (at[final]! < to) points.push([to, value[final]!]);
  return points;
}
