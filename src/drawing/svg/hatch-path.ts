import { rounded } from "../picture.js";
import type { Points } from "../scene.js";

/** The direction of a hatch's lines, as read from left to right. */
export type HatchRun = "rising" | "falling" | "level" | "upright";

/** How the lines of a hatch lie: their direction, how far apart, and how far they keep from the edge. */
export interface HatchRuling {
  readonly run: HatchRun;
  readonly spacing: number;
  readonly inset: number;
}

/** No shape that could be read has more lines than this; a mistyped length may ask for millions. */
const MOST_LINES = 5000;

/**
 * Path data of a hatch's lines over one shape (its rings, even-odd), each cut off at the shape's
 * edges; none over a shape that would take more than MOST_LINES. The lines stand at whole steps from the wall's own origin, so they stay where they are when
 * the shape changes.
 */
export function hatchPath(shape: readonly Points[], ruling: HatchRuling): string {
  const { run, spacing, inset } = ruling;
  const [a, b] = AXIS[run];
  // Slant lines stand `spacing` apart across themselves: the root of 2 more along an axis.
  const step = a !== 0 && b !== 0 ? spacing * Math.SQRT2 : spacing;
  const [low, high] = rangeOf(shape, a, b);
  const parts: string[] = [];
  if (high - low > MOST_LINES * step) return "";
  for (let n = Math.ceil(low / step); n * step < high; n++) {
    const crossings = crossingsAt(shape, a, b, n * step);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      parts.push(segment(crossings[i]!, crossings[i + 1]!, inset));
    }
  }
  return parts.join("");
}

/** A line of each direction is where a x + b y keeps one value. */
const AXIS: Readonly<Record<HatchRun, readonly [number, number]>> = {
  level: [0, 1],
  upright: [1, 0],
  rising: [1, 1],
  falling: [1, -1],
};

type Crossing = readonly [x: number, y: number];

function rangeOf(shape: readonly Points[], a: number, b: number): [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const ring of shape) {
    for (let i = 0; i < ring.length; i += 2) {
      const value = a * ring[i]! + b * ring[i + 1]!;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  return [low, high];
}

/** Where the line a x + b y = value crosses the rings, along the line. */
function crossingsAt(shape: readonly Points[], a: number, b: number, value: number): Crossing[] {
  const crossings: Crossing[] = [];
  for (const ring of shape) {
    let x1 = ring[ring.length - 2]!;
    let y1 = ring[ring.length - 1]!;
    let value1 = a * x1 + b * y1;
    for (let i = 0; i < ring.length; i += 2) {
      const x2 = ring[i]!;
      const y2 = ring[i + 1]!;
      const value2 = a * x2 + b * y2;
      // Half-open, so that a line through a corner crosses once.
      if (value1 <= value !== value2 <= value) {
        const share = (value - value1) / (value2 - value1);
        crossings.push([x1 + share * (x2 - x1), y1 + share * (y2 - y1)]);
      }
      [x1, y1, value1] = [x2, y2, value2];
    }
  }
  return inOrder(crossings, b === 0 ? 1 : 0);
}

/** Two crossings, as nearly all lines have, are put in order without the cost of a sort. */
function inOrder(crossings: Crossing[], axis: 0 | 1): Crossing[] {
  const [one, other] = crossings;
  if (crossings.length > 2) return crossings.sort((c, d) => c[axis] - d[axis]);
  return one && other && one[axis] > other[axis] ? [other, one] : crossings;
}

/** A line from one crossing to the next, kept off both; nothing where there is no room. */
function segment([x1, y1]: Crossing, [x2, y2]: Crossing, inset: number): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length <= 2 * inset) return "";
  const dx = ((x2 - x1) / length) * inset;
  const dy = ((y2 - y1) / length) * inset;
  const from = `M${rounded(x1 + dx)} ${rounded(y1 + dy)}`;
  if (y1 === y2) return `${from}H${rounded(x2 - dx)}`;
  if (x1 === x2) return `${from}V${rounded(y2 - dy)}`;
  return `${from}L${rounded(x2 - dx)} ${rounded(y2 - dy)}`;
}
