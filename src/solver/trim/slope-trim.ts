import { divideRounded, type Nm, rootRounded } from "../../measure/index.js";
import { edgeTrim, type Opening, type Side, type Wall } from "../../model/index.js";
import { type Box, grown } from "../box.js";
import { tidyRing } from "../clip/ring.js";
import { subtract } from "../clip/subtract.js";
import { boundsOf, ringOf, type Ring } from "../shape.js";
import { beyond, slopeOf } from "../slope.js";
import type { Region, Takeaway } from "../solved.js";
import { outerLine, trimOver } from "./end-lines.js";
import { solidBox } from "./opening-gaps.js";
import { sharedReach } from "./shared-reach.js";
import {
  inwardOf,
  isUprightSide,
  type Part,
  partsOf,
  pastEnds,
  type SlopedSide,
} from "./slope-parts.js";
import { mitreJoints, mitreRings, type Strip, wholeOf } from "./strip.js";

/** At its ends a strip is laid out longer by so many of its widths, and then cut by what it meets. */
const OVERRUN = 3;

/**
 * The trim along a side of an outline that slopes, part by part: mitred where it bends; at an upright side or a riser it
 * is cut plumb and stands between, as level trim does (common practice).
 */
export function slopeStrips(wall: Wall, region: Region<Opening>, side: Side, joint: Nm): Strip[] {
  const trim = edgeTrim(wall.edges[side].meets);
  if (!trim) return [];
  const ground: SlopedSide = { wall, region, joint, side, width: trim.face.across };
  const parts = partsOf(ground);
  return parts.flatMap(({ run }, i) =>
    run === 0 ? [] : stripsOn(ground, parts, i, trim.face.along),
  );
}

function stripsOn(ground: SlopedSide, parts: readonly Part[], i: number, piece: Nm): Strip[] {
  const { wall, joint, side, width } = ground;
  const part = parts[i]!;
  const beside = [parts[i - 1], parts[i + 1]] as const;
  const [before, after] = beside.map((each) => (each && each.run > 0 ? each : undefined));
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
    overrun: width,
    mitreJoints: [],
    direction: isUprightSide(side) ? [rise, run] : [run, rise],
    place: placeOn(part, side, start),
  };
  const outline = tidyRing(wholeOf(whole));
  if (!outline) return [];
  const box = boundsOf(outline);
  const ends = [...inTheWay(ground, outline), ...pastEnds(ground, beside, box)];
  const cuts = [...mitreRings(whole), ...ends];
  const joints = mitreJoints(whole).flatMap((ring) => leftOf(ring, ends));
  return subtract({ outline, holes: [] }, cuts).map((shape, k) => {
    const { from, to } = reachAlong(whole, shape.outline);
    const place: Strip["place"] = (along, inward) => whole.place(from + along, inward);
    const own = { mitreStart: 0, mitreEnd: 0, mitreJoints: k === 0 ? joints : [] };
    return { ...whole, ...own, length: to - from, cuts, place };
  });
}

/** What of a joint in a mitre is not in the way of something. */
function leftOf(ring: Ring, cuts: readonly Ring[]): Ring[] {
  const outline = tidyRing(ring);
  return outline ? subtract({ outline, holes: [] }, cuts).map((shape) => shape.outline) : [];
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

/** What ends the trim of a side: the tile's sides beside it, or the outer edges over and under it, steps and openings. */
function inTheWay(ground: SlopedSide, strip: Ring): Ring[] {
  const { wall, region, joint, side } = ground;
  const box: Box = boundsOf(strip);
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
  const openings = region.takeaways.flatMap((taken) => gapAt(strip, taken, side));
  return [...sides, ...steps, ...openings];
}

/**
 * As along a straight side, an opening that comes into a strip ends it where it ends the tile, over its whole width: cut
 * plumb, or level along an upright side. One whose soft joint alone comes into it leaves it be.
 */
function gapAt(strip: Ring, taken: Takeaway<Opening>, side: Side): Ring[] {
  const axis = isUprightSide(side) ? 1 : 0;
  if (!sharedReach(strip, solidBox(taken), axis)) return [];
  const gap = sharedReach(strip, taken.box, axis);
  if (!gap) return [];
  const wide = grown(boundsOf(strip), 1);
  return [
    ringOf(
      axis === 0
        ? { ...wide, left: gap.from, right: gap.to }
        : { ...wide, bottom: gap.from, top: gap.to },
    ),
  ];
}

/** From where to where along a strip a shape of it reaches, rounded outwards. */
function reachAlong({ direction: [dx, dy], place }: Strip, ring: Ring): { from: Nm; to: Nm } {
  const [x0, y0] = place(0, 0);
  const along = ring.flatMap((x, i) =>
    i % 2 === 0 ? [((x - x0) * dx + (ring[i + 1]! - y0) * dy) / Math.hypot(dx, dy)] : [],
  );
  return { from: Math.floor(Math.min(...along)), to: Math.ceil(Math.max(...along)) };
}
