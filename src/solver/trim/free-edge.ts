import type { Nm } from "../../measure/index.js";
import { edgeTrim, type Side, type Wall } from "../../model/index.js";
import type { Box } from "../box.js";
import { moved, rangeBetween, valueAt, type Chain } from "../chain.js";
import type { Region, TrimRun } from "../solved.js";
import { layStrip, type Strip } from "./strip.js";

const SIDES = ["left", "right", "bottom", "top"] as const;

/**
 * The trim along the wall's free edges. Upright runs go through to a trimmed top or bottom; level
 * ones stand between the courses' ends (common practice).
 */
export function layFreeEdges(wall: Wall, region: Region, joint: Nm): readonly TrimRun[] {
  return SIDES.flatMap((side) => {
    // Trim runs along one line; the plan's reader tells of a bottom or top that steps.
    if (isStepped(wall, side)) return [];
    const strip = stripOf(wall, region, side, joint);
    return strip ? [layStrip(strip)] : [];
  });
}

function stripOf(wall: Wall, region: Region, side: Side, joint: Nm): Strip | null {
  const edge = wall.edges[side];
  const trim = edgeTrim(edge.meets);
  if (!trim) return null;
  const { face } = trim;
  const inward = side === "left" || side === "bottom" ? 1 : -1;
  // The region stands in from the bare side by the trim's width and one joint.
  const outer = moved(region[side], -inward * (face.across + joint));
  const isUpright = side === "left" || side === "right";
  const { from, to } = isUpright
    ? uprightReach(wall, region, joint, acrossStrip(outer, inward * face.across))
    : levelReach(region, acrossStrip(outer, inward * face.across));
  return {
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
  };
}

/** What a strip covers from its outer edge to its inner one, in the direction across it. */
interface Width {
  readonly low: Nm;
  readonly high: Nm;
}

function acrossStrip({ value }: Chain, inward: Nm): Width {
  const edges = value.flatMap((outer) => [outer, outer + inward]);
  return { low: Math.min(...edges), high: Math.max(...edges) };
}

/** Whether a bottom or top goes on over steps of the wall's outline. */
function isStepped({ steps, edges }: Wall, side: Side): boolean {
  const facing = side === "bottom" ? "top" : side === "top" ? "bottom" : null;
  return facing !== null && steps.some(({ meets }) => meets[facing]?.side === edges[side].side);
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
