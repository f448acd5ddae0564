import { divideRounded, type Nm, rootRounded } from "../../measure/index.js";
import { edgeTrim, type Side, type Wall } from "../../model/index.js";
import { type Box, grown } from "../box.js";
import { boundsOf, ringOf, type Ring } from "../shape.js";
import { tidyRing } from "../clip/ring.js";
import { subtract } from "../clip/subtract.js";
import { beyond, slopeOf } from "../slope.js";
import { stepInset } from "../region.js";
import type { Region } from "../solved.js";
import { outerLine, trimOver } from "./end-lines.js";
import { mitreRings, type Strip, wholeOf } from "./strip.js";

/** At its ends a strip is laid out longer by so many of its widths, and then cut by what it meets. */
const OVERRUN = 3;

/** What is shorter is left by rounding. */
const LEAST: Nm = 3;

interface Ground {
  readonly wall: Wall;
  readonly region: Region;
  readonly joint: Nm;
}

/** A straight part of the trim's outer edge, in the side's own direction: place along it, and value. A riser has no run. */
interface Part {
  readonly at: Nm;
  readonly value: Nm;
  readonly run: Nm;
  readonly rise: Nm;
}

/**
 * The trim along a side of an outline that slopes, part by part: mitred where it bends; at an upright side or a riser it
 * is cut plumb and stands between, as level trim does (common practice).
 */
export function slopeStrips(wall: Wall, region: Region, side: Side, joint: Nm): Strip[] {
  const ground: Ground = { wall, region, joint };
  const width = edgeTrim(wall.edges[side].meets)?.face.across ?? 0;
  const parts = partsOf(ground, side, width);
  return parts.flatMap(({ run }, i) => (run === 0 ? [] : stripsOn(ground, side, parts, i)));
}

/** Where the region goes on past the wall's own end, round an outside corner, the trim goes on level. */
function partsOf({ wall, region, joint }: Ground, side: Side, width: Nm): Part[] {
  const { at, value } = outerLine(wall, region, side, joint);
  const { left, right } = region.bounds;
  const isLevel = !isUprightSide(side);
  const before = isLevel && left < 0 && at[0] === 0 ? [[left - width, value[0]!] as const] : [];
  const past = isLevel && right > wall.size.across && at.at(-1) === wall.size.across;
  const after = past ? [[right + width, value.at(-1)!] as const] : [];
  const points = [...before, ...at.map((place, i) => [place, value[i]!] as const), ...after];
  return points.slice(1).map(([end, high], i) => {
    const [start, low] = points[i]!;
    return { at: start, value: low, run: end - start, rise: high - low };
  });
}

function stripsOn(ground: Ground, side: Side, parts: readonly Part[], i: number): Strip[] {
  const { wall, joint } = ground;
  const trim = edgeTrim(wall.edges[side].meets);
  if (!trim) return [];
  const { across: width, along: piece } = trim.face;
  const part = parts[i]!;
  const [before, after] = [parts[i - 1], parts[i + 1]].map((each) =>
    each && each.run > 0 ? each : undefined,
  );
  const mitreStart = before ? leanOf(before, part, side, width) : 0;
  const mitreEnd = after ? leanOf(part, after, side, width) : 0;
  const start = before ? Math.max(0, -mitreStart) : OVERRUN * width;
  const end = after ? Math.max(0, -mitreEnd) : OVERRUN * width;
  const { run, rise } = part;
  const whole: Strip = {
    along: { edge: wall.edges[side] },
    side,
    length: rootRounded(BigInt(run) ** 2n + BigInt(rise) ** 2n) + start + end,
    width,
    piece,
    joint,
    mitreStart,
    mitreEnd,
    bends: [],
    cuts: [],
    direction: isUprightSide(side) ? [rise, run] : [run, rise],
    place: placeOn(part, side, start),
  };
  const outline = tidyRing(wholeOf(whole));
  if (!outline) return [];
  const box = boundsOf(outline);
  const cuts = [
    ...mitreRings(whole),
    ...inTheWay(ground, side, box),
    ...pastRisers(ground, side, [parts[i - 1], parts[i + 1]], box),
  ];
  return subtract({ outline, holes: [] }, cuts).flatMap((shape) => {
    const { from, to } = reachAlong(whole, shape.outline);
    if (to - from <= LEAST) return [];
    const place: Strip["place"] = (along, inward) => whole.place(from + along, inward);
    return [{ ...whole, length: to - from, mitreStart: 0, mitreEnd: 0, cuts, place }];
  });
}

/** The tangent of half the turn from one part to the next, times the width; less than nothing round the tile. */
function leanOf(one: Part, other: Part, side: Side, width: Nm): Nm {
  const turn = one.run * other.rise - one.rise * other.run;
  const along = one.run * other.run + one.rise * other.rise;
  const lengths = Math.hypot(one.run, one.rise) * Math.hypot(other.run, other.rise);
  return divideRounded(inwardOf(side) * width * turn, lengths + along);
}

/** A place along a part and in from it, each coordinate rounded once. */
function placeOn({ at, value, run, rise }: Part, side: Side, start: Nm): Strip["place"] {
  const [dx, dy] = [BigInt(run), BigInt(rise)];
  const square = dx * dx + dy * dy;
  const scaled = (product: bigint): Nm => {
    const root = rootRounded(product * product, square);
    return product < 0n ? -root : root;
  };
  return (along, inward) => {
    const [u, n] = [BigInt(along - start), BigInt(inwardOf(side) * inward)];
    const place = at + scaled(u * dx - n * dy);
    const height = value + scaled(u * dy + n * dx);
    return isUprightSide(side) ? [height, place] : [place, height];
  };
}

/** What ends the trim of a side: the tile's sides beside it, or the outer edges over and under it, and steps. */
function inTheWay({ wall, region, joint }: Ground, side: Side, box: Box): Ring[] {
  const ends = isUprightSide(side) ? (["bottom", "top"] as const) : (["left", "right"] as const);
  const sides = ends.map((end) => {
    const line = isUprightSide(side) ? outerLine(wall, region, end, joint) : region[end];
    return beyond(box, slopeOf(end, line, box));
  });
  const steps = region.steps.flatMap((grown, i): Ring[] => {
    const { meets } = wall.steps[i]!;
    if (!isUprightSide(side))
      return meets[side === "bottom" ? "top" : "bottom"] ? [ringOf(grown)] : [];
    // Uprights go on to the outer edge of a tread's trim.
    const top = grown.top - (meets.top ? trimOver(wall, "bottom", joint) : 0);
    const bottom = grown.bottom + (meets.bottom ? trimOver(wall, "top", joint) : 0);
    return [ringOf({ ...grown, bottom, top })];
  });
  // What runs straight through an opening, or behind what stands before the wall, ends where the tile does.
  const openings = region.takeaways.map((taken) => ringOf(taken.box));
  return [...sides, ...steps, ...openings];
}

/**
 * What lies past the risers at a part's ends. At the foot of one trim ends where tile does; over one it stands behind the
 * riser's own trim, a joint off it, or as far off the tile beside the riser.
 */
function pastRisers(
  { wall, joint }: Ground,
  side: Side,
  [before, after]: readonly [Part | undefined, Part | undefined],
  box: Box,
): Ring[] {
  const endOf = ({ at, rise }: Part, isAfter: boolean): Nm => {
    const isFalling = rise * inwardOf(side) < 0;
    const riser = wall.risers.find(({ of, x }) => of === side && x === at);
    const inset = riser ? stepInset(riser.edge, joint) : 0;
    const isOver = isFalling === isAfter;
    const behind = (riser && edgeTrim(riser.edge.meets) ? 0 : inset) - joint;
    return at + (isFalling ? 1 : -1) * (isOver ? behind : inset);
  };
  const wide = grown(box, 1);
  return [
    ...(before?.run === 0 ? [{ ...wide, right: endOf(before, false) }] : []),
    ...(after?.run === 0 ? [{ ...wide, left: endOf(after, true) }] : []),
  ]
    .filter(({ left, right }) => left < right)
    .map(ringOf);
}

/** From where to where along a strip a shape of it reaches, rounded outwards. */
function reachAlong({ direction: [dx, dy], place }: Strip, ring: Ring): { from: Nm; to: Nm } {
  const [x0, y0] = place(0, 0);
  const along = ring.flatMap((x, i) =>
    i % 2 === 0 ? [((x - x0) * dx + (ring[i + 1]! - y0) * dy) / Math.hypot(dx, dy)] : [],
  );
  return { from: Math.floor(Math.min(...along)), to: Math.ceil(Math.max(...along)) };
}

function inwardOf(side: Side): 1 | -1 {
  return side === "left" || side === "bottom" ? 1 : -1;
}

function isUprightSide(side: Side): side is "left" | "right" {
  return side === "left" || side === "right";
}
