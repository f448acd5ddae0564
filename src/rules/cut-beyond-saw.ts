import type { Nm } from "../measure/index.js";
import {
  cutOf,
  pieceBounds,
  pieceId,
  pieceShape,
  type Ring,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { length, lengthOff, pieceCount, verb } from "./words.js";

/**
 * A straight cut that is longer than the plan's saw can make. A rip runs the whole length of the
 * tile; it goes first, and leaves the crosscut less to do. The sides of a notch are shorter than either.
 */
export const cutBeyondSaw: Rule = {
  code: "cut/beyond-saw",
  severity: "warning",
  title: "a cut is longer than the plan's saw can make",
  source: "the plan's own saw",
  limit: null,
  insides: "each",
  check: (wall, plan) => {
    const longest = plan.plan.saw?.longest ?? null;
    return longest === null ? [] : wall.lays.flatMap((lay) => findBeyond(wall, plan, lay, longest));
  },
};

function findBeyond({ wall }: SolvedWall, plan: SolvedPlan, lay: SolvedLay, most: Nm): Finding[] {
  const { face } = lay.lattice;
  // No cut of a tile is longer than a way along two of its edges.
  if (face.across + face.up <= most) return [];
  const beyond: number[] = [];
  let worst: Nm = 0;
  for (let i = 0; i < lay.pieces.count; i++) {
    if (lay.pieces.cut[i] === 0) continue;
    const cut = longestCut(lay, i);
    if (cut <= most) continue;
    beyond.push(i);
    worst = Math.max(worst, cut);
  }
  if (beyond.length === 0) return [];
  const n = beyond.length;
  return [
    {
      origin: lay.lay.origin,
      blocks: [lay.lay, lay.lay.tile, wall],
      message:
        `${pieceCount(n)} ${verb(n, "wants", "want")} a cut ${lengthOff(plan, worst, most)} long; ` +
        `at most ${length(plan, most)}, what the saw can make, is wanted`,
      pieces: beyond.map((i) => pieceId(lay, i)),
    },
  ];
}

/** The longest straight cut of a piece, along the tile, across it, or to a slope. */
function longestCut({ lattice: { face }, pieces }: SolvedLay, i: number): Nm {
  const { left, bottom, right, top } = pieceBounds(pieces, i);
  const slope = longestSlope(pieceShape(pieces, i).outline);
  // What a slope leaves is lower than its tile without having been ripped.
  const isRipped = top - bottom < face.up && cutOf(pieces, i) !== "scribe";
  const isCrosscut = right - left < face.across;
  return Math.max(slope, isRipped ? face.across : 0, isCrosscut ? top - bottom : 0);
}

/** The longest run of an outline that is neither level nor upright, rounded to the nanometre. */
function longestSlope(outline: Ring): Nm {
  let longest = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    const [across, up] = [outline[j]! - outline[i]!, outline[j + 1]! - outline[i + 1]!];
    if (across !== 0 && up !== 0) longest = Math.max(longest, Math.round(Math.hypot(across, up)));
  }
  return longest;
}
