import { formatLength } from "../../measure/index.js";
import type { Hole } from "../../model/index.js";
import { clearOfEdges, clearOfSoftJoints, rimsOnTile } from "../../rules/index.js";
import { layRound, type SolvedPlan, type SolvedWall } from "../../solver/index.js";
import type { Fix, Fixer } from "./fix.js";
import { holePlaceEdits } from "./hole-place-edits.js";
import { isAtHead } from "./statement-at-head.js";

/** So many places are offered, the nearest ones. */
const MOST_OFFERED = 2;

/** Moves a hole off an edge of its tile or off a soft joint, or its plate's rim onto tile, as long as plumbing can still move. */
export const clearHole: Fixer = (state, diagnostic) => {
  const { code, range } = diagnostic;
  if (code !== "hole/near-edge" && code !== "hole/plate-rim" && code !== "hole/soft-joint")
    return [];
  const { solved } = state.outcome;
  const wall = solved.walls.find((each) => each.wall.name === diagnostic.wall);
  const hole = wall?.wall.holes.find(({ origin }) => isAtHead(origin, range));
  // What was chosen round the hole where it is would be chosen anew round it elsewhere.
  if (!wall || !hole || layRound(wall, hole)?.choice) return [];
  return placesFor(code, wall, hole, solved)
    .slice(0, MOST_OFFERED)
    .flatMap((at): Fix[] => {
      const edits = holePlaceEdits(state, hole, at);
      const { units } = state.outcome.plan;
      const place = `${formatLength(at.x, units)}, ${formatLength(at.y, units)}`;
      const title = `Move ${hole.name} ${WORDS[code]}: ${place}`;
      return edits ? [{ title, mends: diagnostic, preferred: false, edits }] : [];
    });
};

type Code = "hole/near-edge" | "hole/plate-rim" | "hole/soft-joint";

const WORDS: Readonly<Record<Code, string>> = {
  "hole/near-edge": "off the tile's edge",
  "hole/plate-rim": "so that its plate's rim lies on tile",
  "hole/soft-joint": "off the soft joint",
};

function placesFor(code: Code, wall: SolvedWall, hole: Hole, plan: SolvedPlan): Hole["at"][] {
  const round = wall.region.roundHoles.find((each) => each.hole === hole);
  const lay = layRound(wall, hole);
  if (!round || !lay) return [];
  switch (code) {
    case "hole/near-edge": {
      const place = clearOfEdges(plan, lay, round);
      return place ? [place] : [];
    }
    case "hole/plate-rim":
      return rimsOnTile(wall, hole).filter((at) => at.x !== hole.at.x || at.y !== hole.at.y);
    case "hole/soft-joint":
      return clearOfSoftJoints(plan, wall, round);
  }
}
