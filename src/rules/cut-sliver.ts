import { sliverLimit } from "../model/index.js";
import { FAULT } from "../solver/index.js";
import { findCutSizes } from "./cut-sizes.js";
import type { Rule } from "./rule.js";
import { SLIVER_SOURCE } from "./trade.js";

/** A piece whose visible width or height is under the sliver limit. */
export const cutSliver: Rule = {
  code: "cut/sliver",
  severity: "error",
  title: "a piece is seen narrower or lower than a third of its tile, or than 1 in",
  source: SLIVER_SOURCE,
  limit: "sliver",
  insides: "each",
  check: (wall, plan) =>
    findCutSizes(wall, plan, {
      bits: { across: FAULT.widthSliver, up: FAULT.heightSliver },
      least: (face) => sliverLimit(face, plan.plan.limits),
      wanted: (least) => `at least ${least}`,
    }),
};
