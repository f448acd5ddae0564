import type { Nm } from "../../measure/index.js";
import { type Chain, rangeBetween } from "../chain.js";
import { firstPast, lastBefore } from "../lattice.js";
import { offsFrom, offsTo } from "./conditions.js";
import { type Axis, type Field, isFlat, type Reach } from "./field.js";
import { within } from "./origins.js";

/** Where a row of tiles may begin, so that its tiles meet a side that slopes along it. */
interface Sloping {
  readonly reach: Reach;
  /** Where the near edge of a tile critically is, before the side's least and its greatest place along it. */
  readonly offsLow: readonly Nm[];
  readonly offsHigh: readonly Nm[];
}

/** Whether any side of the wall was measured out of level or out of plumb. */
export function hasSlopes(field: Field): boolean {
  return field.across.slopes.length > 0 || field.up.slopes.length > 0;
}

/**
 * The critical starts up for one start across: where a tile of some column meets a sloping bottom
 * or top, which it does at a height of its own.
 */
export function criticalUpAt(field: Field, x: Nm): Nm[] {
  const { up, across, shifts } = field;
  const starts = new Set<Nm>();
  for (const sloping of slopingOf(up)) {
    for (const shift of shifts) meetAlong(starts, sloping, across, x + shift, up);
  }
  return [...starts].sort((a, b) => a - b);
}

/** The critical starts across for one start up, where the left or right side slopes. */
export function criticalAcrossAt(field: Field, y: Nm): Nm[] {
  const { up, across, shifts } = field;
  const starts = new Set<Nm>();
  for (const sloping of slopingOf(across)) {
    const met = new Set<Nm>();
    meetAlong(met, sloping, up, y, across);
    for (const start of met) {
      for (const shift of shifts) starts.add(within(start - shift, across.module, across.low));
    }
  }
  for (const u of levelPlaces(field.up, y)) {
    for (const shift of shifts) {
      starts.add(within(u - shift, across.module, across.low));
      starts.add(within(u - across.face - shift, across.module, across.low));
    }
  }
  return [...starts].sort((a, b) => a - b);
}

function slopingOf(axis: Axis): Sloping[] {
  const sloping: Sloping[] = [];
  if (!isFlat(axis.seenFrom)) {
    sloping.push({ reach: axis.seenFrom, offsLow: [axis.face], offsHigh: offsFrom(axis) });
  }
  if (!isFlat(axis.seenTo)) {
    sloping.push({ reach: axis.seenTo, offsLow: offsTo(axis), offsHigh: [0] });
  }
  for (const reach of axis.slopes) {
    if (reach.chain === axis.seenFrom.chain || reach.chain === axis.seenTo.chain) continue;
    sloping.push({ reach, offsLow: [0, axis.face], offsHigh: [0, axis.face] });
  }
  return sloping;
}

/** Adds to `starts` those at which a tile of the row along the slope meets it critically. */
function meetAlong(
  starts: Set<Nm>,
  { reach, offsLow, offsHigh }: Sloping,
  along: Axis,
  origin: Nm,
  axis: Axis,
): void {
  const { face, module, low, high } = along;
  const end = lastBefore(origin, module, high);
  const from = axis.low - axis.face + 1;
  for (let k = firstPast(origin, face, module, low); k <= end; k++) {
    const near = Math.max(low, origin + k * module);
    const far = Math.min(high, origin + k * module + face);
    const range = rangeBetween(reach.chain, near, far);
    for (const off of offsLow) starts.add(within(range.low - off, axis.module, from));
    for (const off of offsHigh) starts.add(within(range.high - off, axis.module, from));
  }
}

/**
 * The places along sloping bottoms and tops that are as high as a critical line of some course, for
 * a start up: there a tile's edge across brings the tile just to the line.
 */
function levelPlaces(axis: Axis, y: Nm): Nm[] {
  const places: Nm[] = [];
  for (const { reach, offsLow, offsHigh } of slopingOf(axis)) {
    for (const off of new Set([...offsLow, ...offsHigh])) {
      const start = within(y + off, axis.module, reach.low - axis.module);
      for (let level = start; level <= reach.high; level += axis.module) {
        if (level >= reach.low) places.push(...crossings(reach.chain, level));
      }
    }
  }
  return places;
}

/** Where a chain has this value, rounded to either side. */
function crossings(chain: Chain, value: Nm): Nm[] {
  const places: Nm[] = [];
  for (let i = 1; i < chain.at.length; i++) {
    const [a, b] = [chain.value[i - 1]!, chain.value[i]!];
    if (a === b || value < Math.min(a, b) || value > Math.max(a, b)) continue;
    const run = chain.at[i]! - chain.at[i - 1]!;
    const place = chain.at[i - 1]! + (run * (value - a)) / (b - a);
    places.push(Math.floor(place), Math.ceil(place));
  }
  return places;
}
