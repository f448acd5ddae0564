import { type Hole, plateReach } from "../model/index.js";
import { type Box, overlaps, softBox, softJoints } from "../solver/index.js";
import type { Rule } from "./rule.js";
import { softPlace } from "./soft-words.js";
import { COMMON_PRACTICE } from "./trade.js";

/** What is fixed in a hole, or its plate, bridges a soft joint that is to move. */
export const holeSoftJoint: Rule = {
  code: "hole/soft-joint",
  severity: "warning",
  title: "a hole or its plate lies on a soft joint in the tile",
  source: COMMON_PRACTICE,
  limit: null,
  ofSet: true,
  check: (wall, plan) =>
    softJoints(wall).runs.flatMap((run) =>
      wall.region.roundHoles
        .filter(({ hole, box }) => overlaps(coveredBox(hole, box), softBox(run)))
        .map(({ hole, box }) => {
          const what = overlaps(box, softBox(run)) ? hole.name : `the plate of ${hole.name}`;
          return {
            origin: hole.origin,
            blocks: [run.lay, run.lay.tile, wall.wall],
            message:
              `${what} lies on the soft joint ${softPlace(run.name, plan.plan.units)}, ` +
              "and what is fixed there bridges it; a soft joint clear of it is wanted",
          };
        }),
    ),
};

/** The box of a hole and of what covers it. */
export function coveredBox(hole: Hole, box: Box): Box {
  const { across, up } = plateReach(hole);
  return {
    left: Math.min(box.left, hole.at.x - across),
    right: Math.max(box.right, hole.at.x + across),
    bottom: Math.min(box.bottom, hole.at.y - up),
    top: Math.max(box.top, hole.at.y + up),
  };
}
