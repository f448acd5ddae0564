import type { Nm } from "../measure/index.js";
import { edgeTrim, type Limits, type Origin, type Trim } from "../model/index.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, lengthLimit, lippageAt, LIPPAGE } from "./trade.js";
import { length, lengthOff } from "./words.js";

/**
 * Trim that is thinner than the tile beside it, so that the tile's cut edge stands proud of it and
 * shows. Trim that stands proud itself covers the edge, as a liner does.
 */
export const trimTooThin: Rule = {
  code: "trim/too-thin",
  severity: "warning",
  title: "tile stands proud of its trim, so that the cut edge shows",
  source: `${COMMON_PRACTICE}; how far: ${LIPPAGE.source}`,
  limit: "proud",
  check: (wall, plan) =>
    wall.lays.flatMap((lay) => placesOf(wall).flatMap((place) => findThin(wall, plan, lay, place))),
};

/** How far tile may stand proud of its trim, beside joints of this width. */
export function mostProud(limits: Limits, joint: Nm): Nm {
  return lengthLimit(limits, "proud", lippageAt(joint));
}

/** Where a trim stands beside the tile. */
interface TrimPlace {
  readonly trim: Trim;
  readonly origin: Origin;
  /** `at the right`, `round window sash`. */
  readonly name: string;
  readonly blocks: Finding["blocks"];
}

function placesOf({ wall }: SolvedWall): TrimPlace[] {
  const edges = Object.values(wall.edges).flatMap(({ meets, origin, side }) => {
    const trim = edgeTrim(meets);
    return trim ? [{ trim, origin, name: `at the ${side}`, blocks: [] }] : [];
  });
  const frames = wall.openings.flatMap((opening) =>
    opening.frame
      ? [
          {
            trim: opening.frame.trim,
            origin: opening.frame.origin,
            name: `round ${opening.kind} ${opening.name}`,
            blocks: [opening],
          },
        ]
      : [],
  );
  return [...edges, ...frames];
}

function findThin(
  { wall }: SolvedWall,
  plan: SolvedPlan,
  { lay, joint }: SolvedLay,
  { trim, origin, name, blocks }: TrimPlace,
): Finding[] {
  const most = mostProud(plan.plan.limits, joint);
  const proud = lay.tile.thickness - trim.thickness;
  // A thickness that was not told counts as none, and is told by the language.
  if (proud <= most || trim.thickness === 0) return [];
  return [
    {
      origin,
      blocks: [...blocks, trim, lay, lay.tile, wall],
      message:
        `tile ${lay.tile.name} stands ${lengthOff(plan, proud, most)} proud of trim ${trim.name} ${name}, ` +
        `and its edge shows; at most ${length(plan, most)} is wanted`,
    },
  ];
}
