/** The trade's figures that a sheet prints, each beside its source. */

/** How much of a tile's back the mortar must touch. */
export const CONTACT = {
  dry: "80 %",
  wet: "95 %",
  source: "ANSI A108.5 3.3.2, quoted in ceramictilefoundation.org/blog/insufficient-mortar",
} as const;

/** How flat a wall must be, in metric plans; in others the rules say it by the tile. */
export const METRIC_FLATNESS = {
  any: "3 mm under a 2 m straightedge",
  source: "nhbc-standards.co.uk 9.1.7 and 9.2.5",
} as const;

/** How plumb it must be: more so for tile that wants a flatter wall. */
export const PLUMB = {
  short: "1/4 in in 10 ft",
  long: "1/8 in in 10 ft",
  source: "quoted in the workmanship answer of ctasc.com",
} as const;
