import { scaleRounded, type Nm } from "../measure/index.js";

/**
 * A side of the region as measured: for bottom and top, heights over places across; for left and
 * right, places across over heights. Straight between its points, flat beyond its ends. Where two points have one
 * place the side has a riser there.
 */
export interface Chain {
  /** Rising, each place twice at most; at least one. */
  readonly at: readonly Nm[];
  readonly value: readonly Nm[];
}

/** Whether the side is straight and square to the wall. */
export function isStraight(chain: Chain): boolean {
  return chain.value.every((v) => v === chain.value[0]);
}

/** The chain moved by `by` in its value. */
export function moved(chain: Chain, by: Nm): Chain {
  return { at: chain.at, value: chain.value.map((v) => v + by) };
}

/** The chain, no lower than a level anywhere; where it crosses the level it has a corner. */
export function atLeast(chain: Chain, level: Nm): Chain {
  return held(chain, level, 1);
}

/** The chain, no higher than a level anywhere; where it crosses the level it has a corner. */
export function atMost(chain: Chain, level: Nm): Chain {
  return held(chain, level, -1);
}

function held(chain: Chain, level: Nm, sign: 1 | -1): Chain {
  const over = chain.value.map((value) => sign * (value - level));
  if (over.every((by) => by >= 0)) return chain;
  if (over.every((by) => by <= 0)) return { at: [0], value: [level] };
  const at: Nm[] = [];
  const value: Nm[] = [];
  chain.at.forEach((place, i) => {
    const crossing = i === 0 ? null : crossingOf(chain, i, level);
    if (crossing !== null && crossing > at.at(-1)! && crossing < place) {
      at.push(crossing);
      value.push(level);
    }
    at.push(place);
    value.push(over[i]! < 0 ? level : chain.value[i]!);
  });
  return { at, value };
}

/** Where the chain passes a level before its corner `i`, rounded once; null where it doesn't. */
function crossingOf({ at, value }: Chain, i: number, level: Nm): Nm | null {
  const [low, high] = [value[i - 1]! - level, value[i]! - level];
  if (low === 0 || high === 0 || low > 0 === high > 0) return null;
  return at[i - 1]! + scaleRounded(at[i]! - at[i - 1]!, Math.abs(low), Math.abs(high - low));
}

/** The chain's value at a place, rounded once to the nearest nanometre; at a riser, that before it. */
export function valueAt(chain: Chain, at: Nm): Nm {
  const { at: places, value } = chain;
  const last = places.length - 1;
  if (at <= places[0]!) return value[0]!;
  if (at >= places[last]!) return value[last]!;
  let i = 1;
  while (places[i]! < at) i++;
  const run = places[i]! - places[i - 1]!;
  const rise = value[i]! - value[i - 1]!;
  return value[i - 1]! + scaleRounded(rise, at - places[i - 1]!, run);
}

/** The chain's value just past a place: another than at it where a riser is. */
export function valueAfter(chain: Chain, at: Nm): Nm {
  const last = chain.at.lastIndexOf(at);
  return last < 0 ? valueAt(chain, at) : chain.value[last]!;
}

/** Whether the chain has a riser between two places. */
export function hasRiser({ at }: Chain, from: Nm, to: Nm): boolean {
  return at.some((place, i) => place === at[i - 1] && place > from && place < to);
}

/** The chain parted at its risers. */
export function betweenRisers({ at, value }: Chain): Chain[] {
  const starts = at.flatMap((place, i) => (i === 0 || place === at[i - 1] ? [i] : []));
  return starts.map((from, i) => {
    const to = starts[i + 1] ?? at.length;
    return { at: at.slice(from, to), value: value.slice(from, to) };
  });
}

/**
 * A level, or the largest value between two places where that is higher. A chain that lies under the level
 * everywhere is looked at no closer.
 */
export function highestOver(chain: Chain, level: Nm, from: Nm, to: Nm): Nm {
  if (chain.value.every((value) => value <= level)) return level;
  return Math.max(level, rangeBetween(chain, from, to).high);
}

/** A level, or the smallest value between two places where that is lower. */
export function lowestUnder(chain: Chain, level: Nm, from: Nm, to: Nm): Nm {
  if (chain.value.every((value) => value >= level)) return level;
  return Math.min(level, rangeBetween(chain, from, to).low);
}

/** The smallest and largest value between two places; a riser at one of them counts as far as it is within. */
export function rangeBetween(chain: Chain, from: Nm, to: Nm): { low: Nm; high: Nm } {
  const { at, value } = chain;
  if (value.length === 1) return { low: value[0]!, high: value[0]! };
  const a = valueAfter(chain, from);
  const b = valueAt(chain, to);
  let low = Math.min(a, b);
  let high = Math.max(a, b);
  for (let i = 0; i < at.length; i++) {
    const place = at[i]!;
    if (place >= to) break;
    if (place <= from) continue;
    low = Math.min(low, value[i]!);
    high = Math.max(high, value[i]!);
  }
  return { low, high };
}
