import { isSolid } from "../model/index.js";
import { isOverWater, wantedFall } from "./fall.js";
import type { Rule } from "./rule.js";
import { FALL } from "./trade.js";
import { length, openingName } from "./words.js";

/**
 * What lies level over a pan or a tub and leads water into the wall. Water is never traded: no limit
 * turns it off, while how much a sill falls towards the room is a limit (`opening/flat-sill`).
 */
export const openingBackSlope: Rule = {
  code: "opening/back-slope",
  severity: "error",
  title: "a sill, or a bench's or a curb's top, over a pan or a tub falls back into the wall",
  source: FALL.source,
  limit: null,
  check: ({ wall }, plan) => {
    if (!isOverWater(wall)) return [];
    return wall.openings.flatMap((opening) => {
      const { inside, origin } = opening;
      const fall = inside?.fall ?? 0;
      if (!inside || fall >= 0) return [];
      const what = `the ${isSolid(opening) ? "top" : "sill"} of ${openingName(opening)}`;
      const message =
        `${what} falls ${length(plan, -fall)} back into the wall, where water stands and works its way in; ` +
        wantedFall(plan, inside);
      return [{ origin, blocks: [opening, wall], message }];
    });
  },
};
