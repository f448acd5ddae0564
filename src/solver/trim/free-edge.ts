import type { Nm } from "../../measure/index.js";
import { edgeTrim, type Opening, type Side, type Wall } from "../../model/index.js";
import type { Box } from "../box.js";
import { rangeBetween, valueAt, type Chain } from "../chain.js";
import { sideDrawnIn } from "../draw-in.js";
import type { Region, TrimRun } from "../solved.js";
import { openingGaps, type Width } from "./opening-gaps.js";
import { layStepTrims } from "./step-trim.js";
import { clearStretches } from "./stretches.js";
import { layStrip, type Strip } from "./strip.js";

const SIDES = ["left", "right", "bottom", "top"] as const;

/**
 * The trim along the wall's free edges. Upright runs go through to a trimmed top or bottom; level
 * ones stand between the courses' ends (common practice), and leave out what steps take. None goes through
 * an opening, nor behind what stands before the wall.
 */
export function layFreeEdges(wall: Wall, region: Region<Opening>, joint: Nm): readonly TrimRun[] {
  const own = SIDES.flatMap((side) => stripsOf(wall, region, side, joint).map(layStrip));
  return [...own, ...layStepTrims(wall, region, joint)];
}

function stripsOf(wall: Wall, region: Region<Opening>, side: Side, joint: Nm): Strip[] {
  const edge = wall.edges[side];
  const trim = edgeTrim(edge.meets);
  if (!trim) return [];
  const { face } = trim;
  const inward = side === "left" || side === "bottom" ? 1 : -1;
  // The region stands in from the bare side by the trim's width and one joint.
  const outer = sideDrawnIn(edge, region[side], -(face.across + joint), inward);
  const isUpright = side === "left" || side === "right";
  const width = acrossStrip(outer, inward * face.across);
  const reach = isUpright ? uprightReach(wall, region, joint, width) : levelReach(region, width);
  const steps = isUpright ? [] : stepsOn(wall, region, side);
  const openings = openingGaps(region, side, width);
  // A length along a slope of the outline is longer than it is wide: the plan's reader tells of it.
  const slopes = edge.outlined ? slopesOf(outer) : [];
  return clearStretches(reach, [...steps, ...slopes, ...openings]).map(({ from, to }) => ({
    along: { edge },
    side,
    length: to - from,
    width: face.across,
    piece: face.along,
    joint,
    mitreStart: false,
    mitreEnd: false,
    bends: outer.at.map((at) => at - from),
    place: (along, inside) => {
      const across = valueAt(outer, from + along) + inward * inside;
      return isUpright ? [across, from + along] : [from + along, across];
    },
  }));
}

/** Where a side of the outline slopes, from one place along it to another. */
function slopesOf({ at, value }: Chain): { readonly left: Nm; readonly right: Nm }[] {
  return at
    .slice(1)
    .map((right, i) => ({ left: at[i]!, right, rise: value[i + 1]! - value[i]! }))
    .filter(({ rise }) => rise !== 0);
}

/** The steps of a bottom or a top: what they leave out, the side's own trim leaves out too. */
function stepsOn({ steps }: Wall, region: Region, side: Side): Box[] {
  const tread = side === "bottom" ? "top" : "bottom";
  return region.steps.filter((_, i) => steps[i]!.meets[tread] !== null);
}

/** From the strip's outer edge to its inner one. */
function acrossStrip({ value }: Chain, inward: Nm): Width {
  const edges = value.flatMap((outer) => [outer, outer + inward]);
  return { low: Math.min(...edges), high: Math.max(...edges) };
}

/** How far up steps of the bottom come, and how far down those of the top, between two places across. */
function stepsBetween({ steps }: Region, { low, high }: Width, bounds: Box): { from: Nm; to: Nm } {
  const over = steps.filter(({ left, right }) => left < high && right > low);
  const tops = over.filter(({ bottom }) => bottom < bounds.bottom).map(({ top }) => top);
  const bottoms = over.filter(({ top }) => top > bounds.top).map(({ bottom }) => bottom);
  return { from: Math.max(-Infinity, ...tops), to: Math.min(Infinity, ...bottoms) };
}

/** Up to where a measured bottom or top leaves room for the strip's whole width. */
function uprightReach(
  wall: Wall,
  region: Region,
  joint: Nm,
  { low, high }: Width,
): { from: Nm; to: Nm } {
  const { from, to } = stepsBetween(region, { low, high }, region.bounds);
  const bottom = Math.max(rangeBetween(region.bottom, low, high).high, from);
  const top = Math.min(rangeBetween(region.top, low, high).low, to);
  return {
    from: bottom - trimOver(wall, "bottom", joint),
    to: top + trimOver(wall, "top", joint),
  };
}

function levelReach(region: Region, { low, high }: Width): { from: Nm; to: Nm } {
  return {
    from: rangeBetween(region.left, low, high).high,
    to: rangeBetween(region.right, low, high).low,
  };
}

function trimOver(wall: Wall, side: Side, joint: Nm): Nm {
  const trim = edgeTrim(wall.edges[side].meets);
  return trim ? trim.face.across + joint : 0;
}
