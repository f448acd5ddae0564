import { NM_PER, type Nm } from "../measure/index.js";
import type { Lay, LimitName, Limits, Tile } from "../model/index.js";

/**
 * The trade's figures that the rules hold a layout against, each beside its source. The limits of
 * slivers and halves stand in the model, since the choice of a start needs them too.
 */

export const COMMON_PRACTICE = "common practice";

const INCH = NM_PER.inch;

export interface Ratio {
  readonly p: number;
  readonly q: number;
}

/** A third of the tile, and 1 in where it is 2 in or more. */
export const SLIVER_SOURCE = COMMON_PRACTICE;

export const HALF_SOURCE =
  "ANSI A108.02 4.3.2, quoted in floortrendsmag.com/articles/100744 and fcimag.com/articles/95138";

/** A joint is at least three times the lot's variation in face size, and never under 1/16 in. */
export const JOINT = {
  perVariation: 3,
  least: INCH / 16,
  source: "ANSI A108.02 4.3.8, quoted in tileletter.com/what-is-minimum-grout-joint",
} as const;

/** Tile whose offset side is over 15 in is offset by a third at most, without an approved mock-up. */
export const OFFSET = {
  sideOver: 15 * INCH,
  most: { p: 1, q: 3 },
  source: "ANSI A108.02 4.3.8.2, quoted in fcimag.com/articles/96103 and fcimag.com/articles/94659",
} as const;

/**
 * Tile with a side over 15 in, in a running bond: the joint is wider by as much as the tile's edge bows.
 * Tile whose edges are as they were pressed is what the standard calls calibrated.
 */
export const LONG_TILE = {
  sideOver: 15 * INCH,
  rectified: INCH / 8,
  pressed: (3 * INCH) / 16,
  source: "ANSI A108.02, quoted in fcimag.com/articles/96103 and ctasc.com head joint answer",
} as const;

/** A soft joint stands at every change of plane and at every dissimilar material. */
export const MOVEMENT_WHERE =
  'ANSI A108.02 4.4.1; TCNA EJ171, quoted in tileletter.com "critical importance of movement joints"';

/** In glazed wall tile a soft joint is never under 1/8 in; at windows and pans setters leave 1/16 in too. */
export const MOVEMENT_WIDTH = {
  least: INCH / 8,
  /** Common practice at a window, a door, a pan or a tub. */
  leastBeside: INCH / 16,
  source:
    "TCNA EJ171; fcimag.com/articles/84636 and tileletter.com/expansion-joints-width-and-spacing; " +
    "1/16 in at a window or a pan: common practice",
} as const;

/** Upright joints of adjacent courses closer than this part of a module read as one (common practice). */
export const STACKED: Ratio = { p: 1, q: 4 };

/** A frame's joint that is not in line with a field joint stays this clear of it (common practice). */
export const TRIM_CLEAR: Nm = INCH / 2;

/** The two ends of a course may differ by this much. */
export const ENDS = {
  most: INCH / 8,
  source:
    "ANSI A108.02 4.3.1 (centre and balance), quoted in floortrendsmag.com/articles/100744; " +
    "1/8 in: common practice",
} as const;

/** The least tile between a round hole and the tile's edge (common practice). */
export const HOLE_CLEAR: Nm = INCH / 2;

/** How far a plate laps over its hole all round, so that no edge of it shows (common practice). */
export const PLATE_LAP: Nm = INCH / 4;

/** A taper shows when the piece is narrow: 5 mm hides in 140 mm and shows in 20 mm. */
export const TAPER = {
  most: { p: 1, q: 10 },
  source: 'en.allconstructions.com "Ceramic Tile Basics"; a tenth: common practice',
} as const;

/** A top or bottom that is out of level is taken up by one cut course. */
export const CUT_COURSE_SOURCE =
  "BS 5385-1:2018 cl. 7.1.5, quoted in tilersforums.com/threads/tiling-standards.40411";

/** Courses of adjoining walls are at one height; the standard names no allowance. */
export const COURSES = { mostMiss: 0, source: CUT_COURSE_SOURCE } as const;

/** Bands of adjoining walls are at one height, as their courses are; the standard names no allowance. */
export const BANDS = { mostOff: 0, source: CUT_COURSE_SOURCE } as const;

/** A course that is set is level within what a tub or a pan may be out of it. */
export const COURSE_LEVEL = {
  most: INCH / 8,
  source:
    "doityourself.com/stry/tileceramiclayout (a tub or a pan level within 1/8 in); of a course: common practice",
} as const;

/** A bond that goes on round a corner may be off by as much as two end cuts may differ (common practice). */
export const WRAP_OFF: Nm = INCH / 8;

/** Nearer than this to the line that a lay is centred on, an opening reads as meant to be on it. */
export const OFF_CENTRE = {
  near: INCH / 2,
  source:
    "ANSI A108.02 4.3.1 (centre and balance), quoted in floortrendsmag.com/articles/100744; " +
    "1/8 in between the cuts, and 1/2 in as nearly: common practice",
} as const;

/** Soft joints stand at most so far apart: 20 to 25 ft in a dry interior, 8 to 12 ft in moisture or sun. */
export const MOVEMENT_APART = {
  dry: 25 * NM_PER.foot,
  wet: 12 * NM_PER.foot,
  source: "NTCA Reference Manual 2024-25 p. 23",
} as const;

/** How far one edge may stand proud of the next, besides the tile's own warpage. */
export const LIPPAGE = {
  narrow: INCH / 32,
  /** From this joint on. */
  wideFrom: INCH / 4,
  wide: INCH / 16,
  source: "ANSI A108.02 4.3.7, quoted in constructionspecifier.com tile and stone lippage",
} as const;

/** How flat a wall is to be before it is tiled: so much in a long and in a short run. */
export interface Flatness {
  readonly long: { readonly off: Nm; readonly in: Nm };
  readonly short: { readonly off: Nm; readonly in: Nm };
}

/** By the tile's longest edge: under 15 in, or 15 in and more. */
export const FLATNESS = {
  largeFrom: 15 * INCH,
  small: {
    long: { off: INCH / 4, in: 10 * NM_PER.foot },
    short: { off: INCH / 16, in: NM_PER.foot },
  },
  large: {
    long: { off: INCH / 8, in: 10 * NM_PER.foot },
    short: { off: INCH / 16, in: 2 * NM_PER.foot },
  },
  source: "quoted in tileletter.com/to-shim-or-not-to-shim",
} as const;

/** How flat the wall is to be for this tile. */
export function flatnessFor({ face }: Pick<Tile, "face">): Flatness {
  return Math.max(face.across, face.up) < FLATNESS.largeFrom ? FLATNESS.small : FLATNESS.large;
}

/** A sill, or a bench's or a curb's top, falls by this much of its depth: 1/4 in per ft. */
export const FALL = {
  least: { p: 1, q: 48 },
  source: "fcimag.com/articles/93759; ANSI A108.01 3.6.4",
} as const;

/** The length that the plan states for a limit, or the trade's. */
export function lengthLimit(limits: Limits, name: LimitName, byDefault: Nm): Nm {
  const stated = limits[name];
  return stated?.kind === "length" ? stated.nm : byDefault;
}

/** The ratio that the plan states for a limit, or the trade's. */
export function ratioLimit(limits: Limits, name: LimitName, byDefault: Ratio): Ratio {
  const stated = limits[name];
  return stated?.kind === "ratio" ? stated : byDefault;
}

/** The narrowest joint that this tile may have: the limit, and three times its lot's variation. */
export function leastJoint(limits: Limits, variation: Nm | null): Nm {
  return Math.max(lengthLimit(limits, "joint", JOINT.least), JOINT.perVariation * (variation ?? 0));
}

/** The narrowest joint of a lay whose tile is long and in a running bond; null for any other. */
export function leastLongJoint(
  limits: Limits,
  { tile, bond }: Pick<Lay, "tile" | "bond">,
): Nm | null {
  const { across, up } = tile.face;
  if (
    bond.kind !== "running" ||
    bond.p % bond.q === 0 ||
    Math.max(across, up) <= LONG_TILE.sideOver
  )
    return null;
  // Tile whose edges the plan doesn't name is held to the lesser figure.
  const byEdges = tile.edges === "pressed" ? LONG_TILE.pressed : LONG_TILE.rectified;
  return lengthLimit(limits, "long", byEdges) + (tile.warpage ?? 0);
}

/** How far one edge may stand proud of the next at this joint, besides the tile's own warpage. */
export function lippageAt(joint: Nm): Nm {
  return joint < LIPPAGE.wideFrom ? LIPPAGE.narrow : LIPPAGE.wide;
}

/** How far the first tile at a corner may be off a bond that goes on. */
export function mostWrapOff(limits: Limits): Nm {
  return lengthLimit(limits, "wrap", WRAP_OFF);
}

/** The narrowest soft joint. */
export function leastMovement(limits: Limits): Nm {
  return lengthLimit(limits, "movement", MOVEMENT_WIDTH.least);
}

/** How far a bond sets adjacent courses apart, the shorter way round: 2/3 to the right is 1/3 to the left. */
export function smallerOffset({ p, q }: Ratio): Ratio {
  return { p: Math.min(p % q, q - (p % q)), q };
}
