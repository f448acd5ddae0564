import type { Nm } from "../../measure/index.js";
import { type Chain, rangeBetween, valueAt } from "../chain.js";
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
  /** Where a slope of an outline leaves a wedge of a tile that is judged by its bounds: the edge, off the near one. */
  readonly wedgeAt: Nm | null;
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
  for (const { place, isWedge } of levelPlaces(field.up, y)) {
    for (const off of isWedge ? wedgeOffs(across) : [0, across.face]) {
      for (const shift of shifts)
        starts.add(within(place - off - shift, across.module, across.low));
    }
  }
  return [...starts].sort((a, b) => a - b);
}

function slopingOf(axis: Axis): Sloping[] {
  const sloping: Sloping[] = [];
  const { seenFrom, seenTo, face } = axis;
  if (!isFlat(seenFrom)) {
    sloping.push(
      seenFrom.outlined
        ? { reach: seenFrom, offsLow: offsFrom(axis), offsHigh: [0, face], wedgeAt: face }
        : { reach: seenFrom, offsLow: [face], offsHigh: offsFrom(axis), wedgeAt: null },
    );
  }
  if (!isFlat(seenTo)) {
    sloping.push(
      seenTo.outlined
        ? { reach: seenTo, offsLow: [0, face], offsHigh: offsTo(axis), wedgeAt: 0 }
        : { reach: seenTo, offsLow: offsTo(axis), offsHigh: [0], wedgeAt: null },
    );
  }
  for (const reach of axis.slopes) {
    if (reach.chain === seenFrom.chain || reach.chain === seenTo.chain) continue;
    sloping.push({ reach, offsLow: [0, face], offsHigh: [0, face], wedgeAt: null });
  }
  return sloping;
}

/** Where along a row a wedge's point critically is, off the near edge of its tile. */
function wedgeOffs(axis: Axis): ReadonlySet<Nm> {
  return new Set([...offsFrom(axis), ...offsTo(axis)]);
}

/** Adds to `starts` those at which a tile of the row along the slope meets it critically. */
function meetAlong(
  starts: Set<Nm>,
  { reach, offsLow, offsHigh, wedgeAt }: Sloping,
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
    if (wedgeAt === null) continue;
    for (const off of wedgeOffs(along)) {
      const point = valueAt(reach.chain, origin + k * module + off) - wedgeAt;
      // Rounded, it may leave a wedge a little less wide.
      for (const by of [-1, 0, 1]) starts.add(within(point + by, axis.module, from));
    }
  }
}

/** Such a place, and whether the slope of an outline leaves a tile there. */
interface LevelPlace {
  readonly place: Nm;
  readonly isWedge: boolean;
}

/**
 * The places along sloping bottoms and tops that are as high as a critical line of some course, for
 * a start up: there a tile's edge across brings the tile just to the line.
 */
function levelPlaces(axis: Axis, y: Nm): LevelPlace[] {
  const places: LevelPlace[] = [];
  for (const { reach, offsLow, offsHigh, wedgeAt } of slopingOf(axis)) {
    for (const off of new Set([...offsLow, ...offsHigh])) {
      const start = within(y + off, axis.module, reach.low - axis.module);
      for (let level = start; level <= reach.high; level += axis.module) {
        if (level < reach.low) continue;
        for (const place of crossings(reach.chain, level)) {
          places.push({ place, isWedge: off === wedgeAt });
        }
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
