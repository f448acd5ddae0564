import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import { type Chain, rangeBetween } from "../chain.js";
import { CUTS } from "../piece-table.js";
import type { Field } from "./field.js";
import type { Part } from "./parts.js";

const SCRIBE = CUTS.indexOf("scribe");

/** So often the crossing of two gentle slopes is drawn nearer; each time by a slope times the other. */
const MOST_STEPS = 60;

/** A side that runs through a box, seen along the axis that it cuts: `sign` is 1 at a box's low edge. */
interface Cutting {
  readonly chain: Chain;
  readonly sign: 1 | -1;
  /** The box's edge at which it cuts, and the opposite one. */
  readonly edge: Nm;
  readonly far: Nm;
}

/**
 * The one part of a box that an upright and a level side cut, as cutting comes to it; null where
 * other sides cut it too, a side runs out of it, or a side is so steep that it might part it.
 */
export function cornerWithin({ region }: Field, box: Box): Part[] | null {
  const { left, bottom, right, top } = box;
  const across = cuttingOne(
    { chain: region.left, sign: 1, edge: left, far: right },
    { chain: region.right, sign: -1, edge: right, far: left },
    bottom,
    top,
  );
  const up = cuttingOne(
    { chain: region.bottom, sign: 1, edge: bottom, far: top },
    { chain: region.top, sign: -1, edge: top, far: bottom },
    left,
    right,
  );
  if (!across || !up || !isGentle(across.chain) || !isGentle(up.chain)) return null;
  const [x, y] = crossing(across, up);
  const reachX = farthest(across, y, up.far);
  const reachY = farthest(up, x, across.far);
  const bounds = {
    left: across.sign > 0 ? reachX : left,
    right: across.sign > 0 ? right : reachX,
    bottom: up.sign > 0 ? reachY : bottom,
    top: up.sign > 0 ? top : reachY,
  };
  return [{ bounds, cut: SCRIBE }];
}

/** The one of two opposite sides that cuts a box and stays within it; null where both cut it, none, or it runs out. */
function cuttingOne(low: Cutting, high: Cutting, from: Nm, to: Nm): Cutting | null {
  const lows = rangeBetween(low.chain, from, to);
  const highs = rangeBetween(high.chain, from, to);
  const cutsLow = lows.high > low.edge;
  const cutsHigh = highs.low < high.edge;
  if (cutsLow === cutsHigh) return null;
  if (cutsLow) return lows.high < low.far ? low : null;
  return highs.low > high.far ? high : null;
}

/** Whether a chain nowhere rises as fast as it runs. */
function isGentle({ at, value }: Chain): boolean {
  for (let i = 1; i < at.length; i++) {
    if (Math.abs(value[i]! - value[i - 1]!) >= (at[i]! - at[i - 1]!) / 2) return false;
  }
  return true;
}

/** Where two sides meet, or a side meets the other's edge of the box, unrounded. */
function crossing(across: Cutting, up: Cutting): [number, number] {
  let x = across.edge;
  let y = up.edge;
  for (let step = 0; step < MOST_STEPS; step++) {
    const nextX = inner(across, y);
    const nextY = inner(up, nextX);
    if (nextX === x && nextY === y) break;
    [x, y] = [nextX, nextY];
  }
  return [x, y];
}

/** Where the box begins along an axis at a place of the other one. */
function inner({ chain, sign, edge }: Cutting, place: number): number {
  const value = heightAt(chain, place);
  return sign > 0 ? Math.max(edge, value) : Math.min(edge, value);
}

/** The chain's value at a place, unrounded. */
function heightAt({ at, value }: Chain, place: number): number {
  const last = at.length - 1;
  if (place <= at[0]!) return value[0]!;
  if (place >= at[last]!) return value[last]!;
  let i = 1;
  while (at[i]! < place) i++;
  const [a, b] = [at[i - 1]!, at[i]!];
  return value[i - 1]! + ((value[i]! - value[i - 1]!) * (place - a)) / (b - a);
}

/** How far out a part reaches, rounded once, along a side from the crossing to the box's far edge. */
function farthest({ chain, sign, edge }: Cutting, from: number, to: Nm): Nm {
  const [low, high] = from < to ? [from, to] : [to, from];
  const values = [heightAt(chain, from), heightAt(chain, to)];
  chain.at.forEach((at, i) => {
    if (at > low && at < high) values.push(chain.value[i]!);
  });
  return Math.round(
    sign > 0 ? Math.max(edge, Math.min(...values)) : Math.min(edge, Math.max(...values)),
  );
}
