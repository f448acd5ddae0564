import type { Nm } from "../measure/index.js";
import type { Side } from "../model/index.js";
import type { Box } from "./box.js";
import { type Chain, rangeBetween, valueAt } from "./chain.js";
import { tidyRing } from "./clip/ring.js";
import type { Ring } from "./shape.js";
import type { Region } from "./solved.js";

/** A measured side as it runs across a box. */
export interface Slope {
  readonly side: Side;
  /** Its corners within the box's reach, rightwards or upwards: x and y. */
  readonly line: readonly (readonly [Nm, Nm])[];
}

/** The measured sides that run through a box. */
export function slopesAcross(box: Box, region: Region): Slope[] {
  const { left: l, bottom: b, right: r, top: t } = box;
  const slopes: Slope[] = [];
  if (rangeBetween(region.bottom, l, r).high > b) slopes.push(levelSlope("bottom", region, box));
  if (rangeBetween(region.top, l, r).low < t) slopes.push(levelSlope("top", region, box));
  if (rangeBetween(region.left, b, t).high > l) slopes.push(uprightSlope("left", region.left, box));
  if (rangeBetween(region.right, b, t).low < r)
    slopes.push(uprightSlope("right", region.right, box));
  return slopes;
}

function levelSlope(side: "bottom" | "top", region: Region, { left, right }: Box): Slope {
  return { side, line: pointsBetween(region[side], left, right) };
}

/** An upright chain as it runs past a box. */
export function uprightSlope(side: "left" | "right", chain: Chain, { bottom, top }: Box): Slope {
  return { side, line: pointsBetween(chain, bottom, top).map(([y, x]) => [x, y] as const) };
}

/** What lies beyond a slope, as far as the box reaches, as an anticlockwise ring. */
export function beyond(box: Box, { side, line }: Slope): Ring {
  const { left: l, bottom: b, right: r, top: t } = box;
  const back = [...line].reverse().flat();
  const across = line.map(([x]) => x);
  const up = line.map(([, y]) => y);
  switch (side) {
    case "bottom": {
      const low = Math.min(b, ...up) - 1;
      return [l, low, r, low, ...back];
    }
    case "top": {
      const high = Math.max(t, ...up) + 1;
      return [...line.flat(), r, high, l, high];
    }
    case "left": {
      const low = Math.min(l, ...across) - 1;
      return [...line.flat(), low, t, low, b];
    }
    case "right": {
      const high = Math.max(r, ...across) + 1;
      return [...back, high, b, high, t];
    }
  }
}

/**
 * The outline of a box scribed to one slope that stays inside it from end to end; null for any
 * other slope. The plain case of `subtract`, kept for its speed: most scribed pieces are this.
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
  const points: (readonly [Nm, Nm])[] = [[from, valueAt(chain, from)]];
  chain.at.forEach((at, i) => {
    if (at > from && at < to) points.push([at, chain.value[i]!]);
  });
  points.push([to, valueAt(chain, to)]);
  return points;
}
