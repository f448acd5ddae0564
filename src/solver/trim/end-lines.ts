import type { Nm } from "../../measure/index.js";
import { edgeTrim, type Side, type Wall } from "../../model/index.js";
import { type Box, grown } from "../box.js";
import { type Chain, rangeBetween } from "../chain.js";
import { sideDrawnIn } from "../draw-in.js";
import { riserMoves, stepInset } from "../region.js";
import type { Ring } from "../shape.js";
import { beyond, slopeOf } from "../slope.js";
import type { Region } from "../solved.js";

/** What an upright strip takes across. */
interface Across {
  readonly low: Nm;
  readonly high: Nm;
}

/** How far the outer edge of a side's trim lies before its tile; 0 without trim. */
export function trimOver({ edges }: Wall, side: Side, joint: Nm): Nm {
  const trim = edgeTrim(edges[side].meets);
  return trim ? trim.face.across + joint : 0;
}

/** Up to where uprights go at a bottom or a top: to the outer edge of its trim, else to the end of its tile; its risers are bare. */
export function outerLine(wall: Wall, region: Region, side: Side, joint: Nm): Chain {
  const inward = side === "left" || side === "bottom" ? 1 : -1;
  const risers = riserMoves(wall, side, (edge) => -stepInset(edge, joint));
  return sideDrawnIn(wall.edges[side], region[side], -trimOver(wall, side, joint), inward, risers);
}

/**
 * Where a strip ends at a side, seen along the stretch that its width takes of that side: square where the side
 * leaves its whole width free; at an outline's slope as far as any of it goes, since it is cut along the slope.
 */
export function endAt({ edges }: Wall, line: Chain, side: Side, { low, high }: Across): Nm {
  const range = rangeBetween(line, low, high);
  const isNear = side === "left" || side === "bottom";
  return edges[side].outlined === isNear ? range.low : range.high;
}

/** How far up steps of the bottom come, and how far down those of the top, between two places across. */
function stepsBetween({ steps }: Region, { low, high }: Across, bounds: Box): { from: Nm; to: Nm } {
  const over = steps.filter(({ left, right }) => left < high && right > low);
  const tops = over.filter(({ bottom }) => bottom < bounds.bottom).map(({ top }) => top);
  const bottoms = over.filter(({ top }) => top > bounds.top).map(({ bottom }) => bottom);
  return { from: Math.max(-Infinity, ...tops), to: Math.min(Infinity, ...bottoms) };
}

/** From where to where a bottom and a top, and the steps on them, leave room for an upright strip. */
export function uprightReach(
  wall: Wall,
  region: Region,
  joint: Nm,
  width: Across,
): { from: Nm; to: Nm } {
  const { from, to } = stepsBetween(region, width, region.bounds);
  const end = (side: "bottom" | "top"): Nm =>
    endAt(wall, outerLine(wall, region, side, joint), side, width);
  return {
    from: Math.max(end("bottom"), from - trimOver(wall, "bottom", joint)),
    to: Math.min(end("top"), to + trimOver(wall, "top", joint)),
  };
}

/** What lies beyond the slopes of an outline, as far as a strip in this box reaches. */
export function slopeCuts(
  { edges }: Wall,
  lines: Readonly<Partial<Record<Side, Chain>>>,
  box: Box,
): Ring[] {
  const wide = grown(box, 1);
  return (["left", "right", "bottom", "top"] as const).flatMap((side) => {
    const line = lines[side];
    return line && edges[side].outlined ? [beyond(wide, slopeOf(side, line, wide))] : [];
  });
}
