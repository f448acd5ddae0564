import type { Nm } from "../measure/index.js";
import { halfLimit, type Lay, type Limits, sliverLimit } from "../model/index.js";
import type { Chain } from "./chain.js";
import { visibleExtent } from "./extent.js";
import { courseShift, moduleAcross } from "./lattice.js";
import type { Lattice, Region } from "./solved.js";

/** What is wrong with a piece's size: any of these added together, 0 when nothing is. */
export const FAULT = {
  widthSliver: 1,
  heightSliver: 2,
  widthUnderHalf: 4,
  heightUnderHalf: 8,
} as const;

/** The numbers that the pieces of one lay are held against, worked out once a lay (see `judgeOf`). */
export interface Judge {
  readonly region: Region;
  readonly across: Nm;
  readonly up: Nm;
  readonly sliverWidth: Nm;
  readonly sliverHeight: Nm;
  readonly halfWidth: Nm;
  readonly halfHeight: Nm;
  /** In a running bond the end of a course is cut at one side however it starts. */
  readonly forcesEnds: boolean;
  /**
   * Whether a piece that goes from side to side of the region is left alone in that direction: inside an
   * opening it is as deep, or as wide, as the opening itself.
   */
  readonly isInside: boolean;
  /** Within these a piece is seen whole and no side of the region slopes through it. */
  readonly clearLeft: Nm;
  readonly clearRight: Nm;
  readonly clearBottom: Nm;
  readonly clearTop: Nm;
}

/** The judge of a lay's pieces; both the choice of a start and the rules ask it. */
export function judgeOf(
  region: Region,
  lay: Pick<Lay, "tile" | "bond">,
  limits: Limits,
  isInside = false,
): Judge {
  const { across, up } = lay.tile.face;
  return {
    region,
    across,
    up,
    sliverWidth: Math.min(across, sliverLimit(across, limits)),
    sliverHeight: Math.min(up, sliverLimit(up, limits)),
    halfWidth: halfLimit(across, limits),
    halfHeight: halfLimit(up, limits),
    forcesEnds: lay.bond.kind === "running",
    isInside,
    clearLeft: highest(region.hiddenLeft ?? region.left),
    clearRight: lowest(region.hiddenRight ?? region.right),
    clearBottom: highest(region.hiddenBottom ?? region.bottom),
    clearTop: lowest(region.hiddenTop ?? region.top),
  };
}

/**
 * The faults of the piece with these bounds, cut from the tile whose left edge is `tileLeft`: a sum
 * of FAULT. A size is the visible one, at the narrow end. Only a size that is cut counts; a sliver
 * is not told as under half too. In a running bond a piece cut at one upright side is held to the
 * sliver limit alone across, since the bond forces the shorter of two alternating end cuts; cut at
 * both, it is held to half (ANSI A108.02 4.3.2, quoted in floortrendsmag.com/articles/100744; the
 * softer rule for running bonds: fcimag.com/articles/94659).
 */
export function judgePiece(
  judge: Judge,
  left: Nm,
  bottom: Nm,
  right: Nm,
  top: Nm,
  tileLeft: Nm,
): number {
  let width = right - left;
  let height = top - bottom;
  let cutSides = (left > tileLeft ? 1 : 0) + (right < tileLeft + judge.across ? 1 : 0);
  if (
    left < judge.clearLeft ||
    right > judge.clearRight ||
    bottom < judge.clearBottom ||
    top > judge.clearTop
  ) {
    const seen = visibleExtent(judge.region, { left, bottom, right, top });
    if (seen === null) return 0;
    width = seen.width;
    height = seen.height;
    cutSides =
      (seen.left > tileLeft ? 1 : 0) + (seen.left + seen.width < tileLeft + judge.across ? 1 : 0);
  }
  const isAcross = judge.isInside && left <= judge.clearLeft && right >= judge.clearRight;
  const isUp = judge.isInside && bottom <= judge.clearBottom && top >= judge.clearTop;
  let faults = 0;
  if (isAcross) faults = 0;
  else if (width < judge.sliverWidth) faults = FAULT.widthSliver;
  else if (width < judge.halfWidth && !(judge.forcesEnds && cutSides < 2))
    faults = FAULT.widthUnderHalf;
  if (isUp) return faults;
  if (height < judge.sliverHeight) faults += FAULT.heightSliver;
  else if (height < judge.halfHeight) faults += FAULT.heightUnderHalf;
  return faults;
}

/** The left edge of the tile that a piece of a course is cut from. */
export function tileLeftOf(lattice: Lattice, course: number, pieceLeft: Nm): Nm {
  const module = moduleAcross(lattice);
  const first = lattice.x + courseShift(lattice, course);
  return first + Math.floor((pieceLeft - first) / module) * module;
}

function highest(chain: Chain): Nm {
  let high = chain.value[0]!;
  for (const value of chain.value) if (value > high) high = value;
  return high;
}

function lowest(chain: Chain): Nm {
  let low = chain.value[0]!;
  for (const value of chain.value) if (value < low) low = value;
  return low;
}
