import type { Rule } from "./rule.js";
import { leastLongJoint, LONG_TILE } from "./trade.js";
import { length, lengthOff } from "./words.js";

/** Long tile in a running bond, whose bow a narrow joint would show as lippage. */
export const jointLongTile: Rule = {
  code: "joint/long-tile",
  severity: "error",
  title:
    "the joint of tile over 15 in, in a running bond, is under 1/8 or 3/16 in and the tile's warpage",
  source: LONG_TILE.source,
  limit: "long",
  insides: "own lay",
  check: (wall, plan) =>
    wall.lays.flatMap(({ lay, joint }) => {
      const wanted = leastLongJoint(plan.plan.limits, lay);
      if (wanted === null || joint >= wanted) return [];
      const { edges, face, warpage } = lay.tile;
      const side = length(plan, Math.max(face.across, face.up));
      const bow = warpage ? `, ${length(plan, warpage)} of it for its warpage,` : "";
      return [
        {
          origin: lay.joint.origin,
          blocks: [lay, lay.tile, wall.wall],
          message:
            `the joint is ${lengthOff(plan, joint, wanted)}; in a running bond of ${edges ?? "tile"} ` +
            `${edges ? "tile " : ""}${side} long, at least ${length(plan, wanted)}${bow} is wanted`,
        },
      ];
    }),
};
