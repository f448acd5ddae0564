import type { Nm } from "../measure/index.js";
import type { Lay, LayJoint, Plan, Side, Wall } from "../model/index.js";
import { grown, overlaps, type Box } from "./box.js";
import { atLeast, atMost, type Chain, rangeBetween } from "./chain.js";
import { courseTop } from "./course-top.js";
import { regionOf } from "./region.js";
import { goesStraightOn, inPlacingOrder } from "./lay-order.js";
import { drawnTop, isSet, setStand } from "./set-stand.js";
import type { LayPatch, Region, SetStand, SolvedLay, SolvedWall } from "./solved.js";

/** A lay that has its place on the wall already: those laid after it begin one joint past it. */
export interface Placed {
  readonly lay: Lay;
  readonly joint: Nm;
  /** What of the wall it has. */
  readonly box: Box;
}

/** Where a lay is to be laid: its wall, and the lays of that wall that have their places. */
export interface LayPlot {
  readonly plan: Plan;
  readonly wall: Wall;
  readonly lay: Lay;
  readonly placed: readonly Placed[];
}

/** Where a lay of a laid wall was laid. */
export function plotOf(plan: Plan, { wall, lays }: SolvedWall, lay: SolvedLay): LayPlot {
  const order = inPlacingOrder(wall.lays);
  const placed = order.slice(0, order.indexOf(lay.lay)).flatMap((each): Placed[] => {
    const other = lays.find((laid) => laid.lay === each);
    return other ? [placedBy(each, other)] : [];
  });
  return { plan, wall, lay: lay.lay, placed };
}

/** What of the wall a laid lay has: where its courses are set, up to their top as it was measured. */
export function placedBy(
  lay: Lay,
  { joint, region, stand }: Pick<SolvedLay, "joint" | "region" | "stand">,
): Placed {
  return { lay, joint, box: stand ? { ...region.bounds, top: stand.top } : region.bounds };
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/**
 * What of a wall's region a lay has at a width of joint: within its own bounds, without what the lays
 * beside it have, and no higher than its last course where the plan counts them.
 */
export function layRegion({ plan, wall, lay, placed }: LayPlot, joint: Nm): Region {
  const whole: Region = regionOf(plan, wall, joint);
  if (placed.length === 0 && lay.area === null) return whole;
  const bounded = SIDES.reduce(
    (region, side) => withBound(region, { lay, placed, joint, side }),
    whole,
  );
  const free = placed.reduce(
    (region, other) => without(region, other, jointBetween(lay, joint, other)),
    bounded,
  );
  const courses = lay.area?.courses ?? null;
  if (courses === null) return free;
  const ground = { wall, region: free, lay, joint };
  if (!isSet(lay)) return drawnIn(free, "top", courseTop(ground, courses));
  const set = { ...ground, lay };
  return drawnIn(free, "top", drawnTop(set, setStand(set)));
}

/** Where the set courses of a lay stand, at a width of joint; null where none is set. */
export function standOf(plot: LayPlot, joint: Nm): SetStand | null {
  const { lay, wall } = plot;
  if (!isSet(lay)) return null;
  return setStand({ wall, region: startRegion(plot, joint), lay, joint });
}

/** What a lay's start is worked out from: of set courses, what they would have if nothing ended them. */
export function startRegion(plot: LayPlot, joint: Nm): Region {
  const { lay } = plot;
  if (!isSet(lay)) return layRegion(plot, joint);
  const area = lay.area && { ...lay.area, courses: null };
  return layRegion({ ...plot, lay: { ...lay, area } }, joint);
}

/** The sides at which a region ends elsewhere than the whole wall's. */
export function innerSides(region: Region, whole: Region): Side[] {
  return SIDES.filter((side) => region[side] !== whole[side] && !isSame(region, whole, side));
}

function isSame(a: Region, b: Region, side: Side): boolean {
  return a[side].value.join() === b[side].value.join() && a[side].at.join() === b[side].at.join();
}

/** The joint between a lay and one that has its place: as either says, else the wider of their own. */
export function jointBetween(lay: Lay, joint: Nm, other: Placed): Nm {
  if (goesStraightOn(lay, other.lay)) return joint;
  return statedBetween(lay, other.lay)?.width ?? Math.max(joint, other.joint);
}

/** The joint to a lay that has its place already, where one of both states it: the later one's goes first. */
export function statedBetween(lay: Lay, placed: Lay): LayJoint | null {
  return lay.area?.joint ?? placed.area?.joint ?? null;
}

function withBound(
  region: Region,
  { lay, placed, joint, side }: Pick<LayPlot, "lay" | "placed"> & { joint: Nm; side: Side },
): Region {
  const bound = lay.area?.bounds[side];
  if (!bound) return region;
  if (bound.kind === "place") return drawnIn(region, side, bound.at);
  const other = placed.find((each) => each.lay.name === bound.lay);
  if (!other) return region;
  const between = jointBetween(lay, joint, other);
  return drawnIn(region, side, pastBox(other.box, side, between));
}

/** Where a lay begins that has another one beyond its side. */
function pastBox(box: Box, side: Side, joint: Nm): Nm {
  switch (side) {
    case "left":
      return box.right + joint;
    case "right":
      return box.left - joint;
    case "bottom":
      return box.top + joint;
    case "top":
      return box.bottom - joint;
  }
}

/** The region without what another lay has: drawn in where that goes from side to side, else cut out. */
function without(region: Region, { lay, box }: Placed, joint: Nm): Region {
  const { bounds } = region;
  const taken = grown(box, joint);
  if (!overlaps(bounds, taken)) return region;
  // Elsewhere a side that is out of level or plumb may lie further out than beside the other lay.
  const beside = acrossWithin(region, { ...bounds, bottom: box.bottom, top: box.top });
  const over = upWithin(region, { ...bounds, left: box.left, right: box.right });
  const isAcross = taken.left <= beside.left && taken.right >= beside.right;
  const isUpright = taken.bottom <= over.bottom && taken.top >= over.top;
  if (isAcross && taken.bottom <= bounds.bottom) return drawnIn(region, "bottom", taken.top);
  if (isAcross && taken.top >= bounds.top) return drawnIn(region, "top", taken.bottom);
  if (isUpright && taken.left <= bounds.left) return drawnIn(region, "left", taken.right);
  if (isUpright && taken.right >= bounds.right) return drawnIn(region, "right", taken.left);
  return {
    ...region,
    takeaways: [...region.takeaways, { opening: patchOf(lay, box), box: taken }],
  };
}

function patchOf({ name, allows, origin }: Lay, box: Box): LayPatch {
  return {
    kind: "lay",
    name,
    at: { x: box.left, y: box.bottom },
    size: { across: box.right - box.left, up: box.top - box.bottom },
    free: { x: null, y: null },
    reaches: null,
    frame: null,
    movement: null,
    inside: null,
    allows,
    origin,
  };
}

/** The region with one side drawn in to a level or upright line; what lies beyond it is left out. */
function drawnIn(region: Region, side: Side, at: Nm): Region {
  if (side === "top" && isUnder(region, at)) return region;
  const isLow = side === "left" || side === "bottom";
  const cut = trimmed({ ...region, [side]: (isLow ? atLeast : atMost)(region[side], at) });
  return { ...cut, ...hiddenWithin(cut) };
}

/** Whether the top is nowhere over a height: then a line there leaves all of it as it is. */
function isUnder({ top, bounds }: Region, at: Nm): boolean {
  return rangeBetween(top, bounds.left, bounds.right).high <= at;
}

/** A strip that another wall's tile hides counts only where it reaches into the region. */
function hiddenWithin({ left, right, hiddenLeft, hiddenRight, bounds }: Region): Partial<Region> {
  const reach = (chain: Chain) => rangeBetween(chain, bounds.bottom, bounds.top);
  const isLeft = hiddenLeft !== null && reach(hiddenLeft).high > reach(left).low;
  const isRight = hiddenRight !== null && reach(hiddenRight).low < reach(right).high;
  return { hiddenLeft: isLeft ? hiddenLeft : null, hiddenRight: isRight ? hiddenRight : null };
}

/** The region with its bounds drawn to its sides, and without openings, holes and steps outside them. */
function trimmed(region: Region): Region {
  // Where a side is out of level or plumb, what is left of it depends on the sides beside it.
  const bounds = acrossWithin(region, upWithin(region, acrossWithin(region, region.bounds)));
  return {
    ...region,
    bounds,
    takeaways: region.takeaways.filter(({ box }) => overlaps(box, bounds)),
    roundHoles: region.roundHoles.filter(({ box }) => overlaps(box, bounds)),
    steps: region.steps.filter((box) => overlaps(box, bounds)),
  };
}

function acrossWithin(region: Region, box: Box): Box {
  const { low } = rangeBetween(region.left, box.bottom, box.top);
  const { high } = rangeBetween(region.right, box.bottom, box.top);
  return { ...box, left: Math.max(box.left, low), right: Math.min(box.right, high) };
}

function upWithin(region: Region, box: Box): Box {
  const { low } = rangeBetween(region.bottom, box.left, box.right);
  const { high } = rangeBetween(region.top, box.left, box.right);
  return { ...box, bottom: Math.max(box.bottom, low), top: Math.min(box.top, high) };
}
