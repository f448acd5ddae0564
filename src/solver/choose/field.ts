import type { Nm } from "../../measure/index.js";
import type { Lay, Limits, Plan, Side, Wall } from "../../model/index.js";
import type { Box } from "../box.js";
import { rangeBetween, type Chain } from "../chain.js";
import { judgeOf, type Judge } from "../judge.js";
import { judgedRegion } from "../judged-region.js";
import { courseShift, latticeOf } from "../lattice.js";
import { regionOf } from "../region.js";
import type { Region } from "../solved.js";
import { asSettled, type Ground, type SettledLay } from "../start.js";
import { balanceOf, type Balance, type Row } from "./balance.js";

/** A side of the region, or the edge of a hidden strip, and how far it wanders. */
export interface Reach {
  readonly chain: Chain;
  readonly low: Nm;
  readonly high: Nm;
  /** Whether the pieces that it cuts are judged by their bounds, and not at the narrow end (see `judgedRegion`). */
  readonly outlined: boolean;
}

/** Where things stand in one direction: what the tiles of a row may meet. */
export interface Axis extends Row {
  /** The region's reach. */
  readonly low: Nm;
  readonly high: Nm;
  /** The side (or hidden strip's edge) at which what is seen begins, and ends. */
  readonly seenFrom: Reach;
  readonly seenTo: Reach;
  /** Places at which a straight side, a hidden strip, an opening or a hole begins or ends. */
  readonly edges: readonly Nm[];
  readonly slopes: readonly Reach[];
  /** A size under these is a sliver, or under half. */
  readonly sliver: Nm;
  readonly half: Nm;
}

/** All that the weighing of starts needs to know of a wall at one width of joint. */
export interface Field {
  readonly ground: Ground & { readonly lay: SettledLay };
  /** What cuts the tiles; the judge has a region of its own. */
  readonly region: Region;
  readonly judge: Judge;
  readonly balance: Balance;
  readonly across: Axis;
  readonly up: Axis;
  readonly sides: Readonly<Record<"left" | "right" | "bottom" | "top", Reach>>;
  /** How far each phase of the bond is shifted; one a phase. */
  readonly shifts: readonly Nm[];
  readonly boxes: readonly Box[];
  readonly circles: readonly Box[];
  /** Both of them. */
  readonly obstacles: readonly Box[];
}

/** The field of a lay with this joint; `region` is what of the wall it has, by default all of it. */
export function fieldOf(
  plan: Plan,
  wall: Wall,
  lay: Lay,
  joint: Nm,
  region: Region = regionOf(plan, wall, joint),
): Field {
  const judge = judgeOf(judgedRegion(wall, region), lay, plan.limits);
  const lattice = latticeOf(lay, joint, 0, 0);
  const balance = balanceOf(region, lattice);
  const { left, right, bottom, top } = region.bounds;
  const { edges } = wall;
  const upright = (side: Side) => reachOf(region[side], bottom, top, edges[side].outlined);
  const level = (side: Side) => reachOf(region[side], left, right, edges[side].outlined);
  const sides = {
    left: upright("left"),
    right: upright("right"),
    bottom: level("bottom"),
    top: level("top"),
  };
  const boxes = [...region.takeaways.map((takeaway) => takeaway.box), ...region.steps];
  const circles = region.roundHoles.map((round) => round.box);
  const obstacles = [...boxes, ...circles];
  const strip = (chain: Chain) => reachOf(chain, bottom, top, false);
  const hiddenTo = region.hiddenLeft && strip(region.hiddenLeft);
  const hiddenFrom = region.hiddenRight && strip(region.hiddenRight);
  const hidden = [hiddenTo, hiddenFrom].filter((reach) => reach !== null);
  const acrossMet = edgesAndSlopes(
    [sides.left, sides.right, ...hidden],
    [...obstacles.flatMap((box) => [box.left, box.right]), ...risersOf(region)],
  );
  const across: Axis = {
    face: balance.across.face,
    module: balance.across.module,
    clearLow: balance.across.clearLow,
    clearHigh: balance.across.clearHigh,
    low: left,
    high: right,
    seenFrom: hiddenTo ?? sides.left,
    seenTo: hiddenFrom ?? sides.right,
    edges: acrossMet.edges,
    slopes: acrossMet.slopes,
    sliver: judge.sliverWidth,
    half: judge.halfWidth,
  };
  const upMet = edgesAndSlopes(
    [sides.bottom, sides.top],
    obstacles.flatMap((box) => [box.bottom, box.top]),
  );
  const up: Axis = {
    face: balance.up.face,
    module: balance.up.module,
    clearLow: balance.up.clearLow,
    clearHigh: balance.up.clearHigh,
    low: bottom,
    high: top,
    seenFrom: sides.bottom,
    seenTo: sides.top,
    edges: upMet.edges,
    slopes: upMet.slopes,
    sliver: judge.sliverHeight,
    half: judge.halfHeight,
  };
  const shifts = Array.from({ length: lattice.q }, (_, step) => courseShift(lattice, step + 1));
  const ground = { wall, region, lay: asSettled(lay), joint };
  return { ground, region, judge, balance, across, up, sides, shifts, boxes, circles, obstacles };
}

/** The same field with other limits. */
export function withLimits(field: Field, limits: Limits): Field {
  const judge = judgeOf(field.judge.region, field.ground.lay, limits);
  return {
    ...field,
    judge,
    across: { ...field.across, sliver: judge.sliverWidth, half: judge.halfWidth },
    up: { ...field.up, sliver: judge.sliverHeight, half: judge.halfHeight },
  };
}

export function isFlat(reach: Reach): boolean {
  return reach.low === reach.high;
}

/** The places across at which the bottom or the top has a riser. */
function risersOf({ bottom, top }: Region): Nm[] {
  return [bottom, top].flatMap(({ at }) => at.filter((place, i) => i > 0 && place === at[i - 1]));
}

function reachOf(chain: Chain, from: Nm, to: Nm, outlined: boolean): Reach {
  return { chain, ...rangeBetween(chain, from, to), outlined };
}

function edgesAndSlopes(
  reaches: readonly Reach[],
  places: readonly Nm[],
): { edges: readonly Nm[]; slopes: readonly Reach[] } {
  const flat = reaches.filter(isFlat).map((reach) => reach.low);
  const edges = [...new Set([...flat, ...places])].sort((a, b) => a - b);
  return { edges, slopes: reaches.filter((reach) => !isFlat(reach)) };
}
