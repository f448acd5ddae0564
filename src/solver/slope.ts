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
  const slopes: Slope[] = [];
  if (rangeBetween(region.bottom, l, r).high > b)
    slopes.push(slopeOf("bottom", region.bottom, box));
  if (rangeBetween(region.top, l, r).low < t) slopes.push(slopeOf("top", region.top, box));
  if (rangeBetween(region.left, b, t).high > l) slopes.push(slopeOf("left", region.left, box));
  if (rangeBetween(region.right, b, t).low < r) slopes.push(slopeOf("right", region.right, box));
  return slopes;
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
  const { left: l, bottom: b, right: r, top: t } = box;
  const back = [...line].reverse().flat();
  const across = line.map(([x]) => x);
  const up = line.map(([, y]) => y);
  const [[x0, y0], [x1, y1]] = [line[0]!, line.at(-1)!];
  switch (side) {
    case "bottom": {
      const low = Math.min(b, ...up) - 1;
      return [x0, low, x1, low, ...back];
    }
    case "top": {
      const high = Math.max(t, ...up) + 1;
      return [...line.flat(), x1, high, x0, high];
    }
    case "left": {
      const low = Math.min(l, ...across) - 1;
      return [...line.flat(), low, y1, low, y0];
    }
    case "right": {
      const high = Math.max(r, ...across) + 1;
      return [...back, high, y0, high, y1];
    }
  }
}

/**
 * The outline of a box scribed to one slope that stays inside it from end to end (the slope just as
 * far as the box reaches); null for any other slope. The plain case of `subtract`, kept for its
 * speed: most scribed pieces are this.
 */
export function scribed(box: Box, { side, line }: Slope): Ring | null {
  const { left: l, bottom: b, right: r, top: t } = box;
  const back = [...line].reverse().flat();
  switch (side) {
    case "bottom":
      return line.every(([, y]) => y >= b && y < t) ? tidyRing([...line.flat(), r, t, l, t]) : null;
    case "top":
      return line.every(([, y]) => y > b && y <= t) ? tidyRing([l, b, r, b, ...back]) : null;
    case "left":
      return line.every(([x]) => x >= l && x < r) ? tidyRing([r, b, r, t, ...back]) : null;
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
