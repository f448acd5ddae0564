import { halfLimit } from "../model/index.js";
import { FAULT } from "../solver/index.js";
import { findCutSizes } from "./cut-sizes.js";
import type { Rule } from "./rule.js";
import { HALF_SOURCE } from "./trade.js";

/** A cut under half of the tile, in a direction in which the bond does not force it. */
export const cutUnderHalf: Rule = {
  code: "cut/under-half",
  severity: "warning",
  title: "a piece is cut to less than half of its tile where the bond does not force it",
  source: HALF_SOURCE,
  limit: "half",
  insides: "each",
  check: (wall, plan) =>
    findCutSizes(wall, plan, {
      bits: { across: FAULT.widthUnderHalf, up: FAULT.heightUnderHalf },
      least: (face) => halfLimit(face, plan.plan.limits),
      wanted: (least) => `half a tile, ${least},`,
    }),
};
