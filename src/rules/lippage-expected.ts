import { scaleRounded, type Nm } from "../measure/index.js";
import type { Bond, Lay, Limits } from "../model/index.js";
import type { Rule } from "./rule.js";
import { lengthLimit, LIPPAGE, lippageAt } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * Bowed tile in a running bond: where a tile's end stands beside its neighbour's bow, one edge
 * stands proud of the other however well it is set. The standard adds the tile's warpage to what it
 * allows, so that this is accepted; told is what will be seen, where the warpage alone is more than
 * setting is allowed.
 */
export const lippageExpected: Rule = {
  code: "lippage/expected",
  severity: "information",
  title: "the tile's warpage alone gives more lippage at the bond's offset than setting is allowed",
  source: `${LIPPAGE.source}; the bow as a shallow arc: common practice`,
  limit: "lippage",
  insides: "own lay",
  check: (wall, plan) =>
    wall.lays.flatMap(({ lay, joint }) => {
      const bow = bowAlong(lay);
      const allowed = mostLippage(plan.plan.limits, joint);
      const expected = expectedLippage(lay);
      if (expected <= allowed) return [];
      return [
        {
          origin: lay.origin,
          blocks: [lay, lay.tile, wall.wall],
          message:
            `a bow of ${length(plan, bow)} makes edges stand ${lengthOff(plan, expected, allowed)} proud at this ` +
            `offset before any fault of setting; at most ${length(plan, allowed)} is wanted, by flatter tile, ` +
            `a smaller offset or a joint of ${length(plan, LIPPAGE.wideFrom)}`,
        },
      ];
    }),
};

/** How far edges may stand proud by the warpage alone, at joints of this width. */
export function mostLippage(limits: Limits, joint: Nm): Nm {
  return lengthLimit(limits, "lippage", lippageAt(joint));
}

/** The longest edge's bow is told; where courses run across it, it doesn't lie along them. */
function bowAlong({ tile: { face, warpage } }: Pick<Lay, "tile">): Nm {
  return face.across < face.up ? 0 : (warpage ?? 0);
}

/** How far edges of a lay's tile stand proud of each other by its warpage alone; 0 where none is stated. */
export function expectedLippage(lay: Pick<Lay, "tile" | "bond">): Nm {
  return lippageOf(bowAlong(lay), lay.bond);
}

/**
 * How far a bowed edge stands over its own ends at the place where the neighbour ends: along a
 * shallow arc of height w, at the part f of its length, 4 w f (1 - f). In a stack bond ends meet ends.
 */
function lippageOf(bow: Nm, bond: Bond): Nm {
  if (bond.kind === "stack") return 0;
  const { p, q } = bond;
  return scaleRounded(bow, 4 * p * (q - p), q * q);
}
