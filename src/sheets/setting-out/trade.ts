import { NM_PER } from "../../measure/index.js";

/** The trade's figures that a sheet prints, each beside its source. */

/** How much of a tile's back the mortar must touch. */
export const CONTACT = {
  dry: "80 %",
  wet: "95 %",
  source: "ANSI A108.5 3.3.2, quoted in ceramictilefoundation.org/blog/insufficient-mortar",
} as const;

/** How flat a wall must be: more so for tile with a side of 15 in or more. */
export const FLATNESS = {
  longFrom: 15 * NM_PER.inch,
  short: "1/4 in in 10 ft and 1/16 in in 1 ft",
  long: "1/8 in in 10 ft and 1/16 in in 2 ft",
  source: "quoted in tileletter.com/to-shim-or-not-to-shim",
} as const;

/** The same in metric plans. */
export const METRIC_FLATNESS = {
  any: "3 mm under a 2 m straightedge",
  source: "nhbc-standards.co.uk 9.1.7 and 9.2.5",
} as const;

/** How plumb it must be. */
export const PLUMB = {
  short: "1/4 in in 10 ft",
  long: "1/8 in in 10 ft",
  source: "quoted in the workmanship answer of ctasc.com",
} as const;
