import type { Nm } from "../measure/index.js";
import { NM_PER } from "../measure/index.js";

/** A limit as `rules { ... }` states it. */
export type Limit =
  | { readonly kind: "off" }
  | { readonly kind: "length"; readonly nm: Nm }
  | { readonly kind: "ratio"; readonly p: number; readonly q: number };

/** What a limit's statement may hold besides `off` (`on` restores the default). */
export type LimitShape = "length" | "ratio" | "switch";

/** One name of `rules { ... }`: its shape and, for people, what it bounds. */
export interface LimitEntry {
  readonly shape: LimitShape;
  readonly about: string;
}

/**
 * The names that `rules { ... }` knows. Each is the limit of one rule; `off` silences the rule.
 * The defaults stand with the rules that use them, beside their sources.
 */
export const LIMITS = {
  sliver: { shape: "length", about: "the smallest visible width or height of a piece" },
  half: { shape: "switch", about: "whether a cut under half a tile is told" },
  leg: { shape: "length", about: "the narrowest leg of an L or U cut" },
  joint: { shape: "length", about: "the narrowest joint" },
  offset: { shape: "ratio", about: "the largest offset of a running bond in long tile" },
  movement: { shape: "length", about: "the narrowest soft joint" },
  stacked: {
    shape: "ratio",
    about: "how near head joints of adjacent courses may come, in modules",
  },
  clear: { shape: "length", about: "how clear of field joints a frame's joint stays" },
  ends: { shape: "length", about: "how much the two ends of a course may differ" },
  hole: { shape: "length", about: "how near a tile's edge a hole may be" },
  plate: { shape: "length", about: "how far a plate laps over its hole, all round" },
  bare: { shape: "switch", about: "whether a cut edge on a free side without trim is told" },
  niche: { shape: "switch", about: "whether a niche off the joints is told" },
  taper: { shape: "ratio", about: "the largest taper of a piece, of its narrowest width" },
  rake: { shape: "switch", about: "whether a side out of level that leaves its course is told" },
  courses: { shape: "length", about: "how much the courses of two walls may miss at a corner" },
  band: { shape: "length", about: "how far a band may be off its height on the next wall" },
  wrap: {
    shape: "length",
    about: "how far a corner's first tile may be off the bond that goes on round it",
  },
  centre: {
    shape: "length",
    about: "up to where an opening that misses the line the lay is centred on is told",
  },
  apart: { shape: "length", about: "how far apart soft joints may stand" },
  proud: { shape: "length", about: "how far tile may stand proud of its trim" },
  long: {
    shape: "length",
    about: "the narrowest joint of tile over 15 in in a running bond, before its warpage",
  },
  lippage: {
    shape: "length",
    about: "how far edges may stand proud of each other by the tile's warpage alone",
  },
  fall: {
    shape: "ratio",
    about: "the least fall of a sill or a top over a pan or a tub, of its depth",
  },
  set: {
    shape: "length",
    about: "how far the measured top of set courses may be off where the plan has it",
  },
  level: { shape: "length", about: "how much the top of set courses may be out of level" },
  nominal: { shape: "switch", about: "whether a face in whole inches or 50 mm is asked about" },
} as const satisfies Record<string, LimitEntry>;

export type LimitName = keyof typeof LIMITS;

/** The limits a plan states; a name that is missing has its default. */
export type Limits = Readonly<Partial<Record<LimitName, Limit>>>;

/** A tile this wide or high (2 in) is held to the inch as well as to the third (common practice). */
const SLIVER_INCH_FROM: Nm = 2 * NM_PER.inch;

/**
 * The smallest visible width or height of a piece, for a tile of that width or height:
 * a third of it, and 1 in where the tile's is 2 in or more (common practice; trade articles use
 * 1/5 to 1/2 of the tile, 50 mm and 1 in). A third is rounded up to the next nanometre, so that
 * `size < limit` says exactly "under a third". 0 when the rule is off.
 */
export function sliverLimit(tile: Nm, limits: Limits): Nm {
  const stated = limits.sliver;
  if (stated?.kind === "off") return 0;
  if (stated?.kind === "length") return stated.nm;
  const third = Math.ceil(tile / 3);
  return tile >= SLIVER_INCH_FROM ? Math.max(third, NM_PER.inch) : third;
}

/** Half a tile, rounded up, so that `size < limit` says exactly "under half"; 0 when the rule is off. */
export function halfLimit(tile: Nm, limits: Limits): Nm {
  return limits.half?.kind === "off" ? 0 : Math.ceil(tile / 2);
}
