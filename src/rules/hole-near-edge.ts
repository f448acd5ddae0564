import type { Nm } from "../measure/index.js";
import {
  type Box,
  overlaps,
  pieceBounds,
  pieceId,
  rangeBetween,
  type Region,
  type RoundHole,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE, HOLE_CLEAR, lengthLimit } from "./trade.js";
import { length, lengthOff, pieceCount } from "./words.js";

/** A round hole that leaves a thin strip to the edge of its tile. One that crosses the edge leaves none. */
export const holeNearEdge: Rule = {
  code: "hole/near-edge",
  severity: "warning",
  title: "a round hole is under 1/2 in from the edge of its tile",
  source: COMMON_PRACTICE,
  limit: "hole",
  check: (wall, plan) =>
    wall.lays.flatMap((lay) =>
      lay.region.roundHoles.flatMap((hole) => findNear(wall, plan, lay, hole)),
    ),
};

function findNear(
  wall: SolvedWall,
  plan: SolvedPlan,
  lay: SolvedLay,
  { hole, box }: RoundHole,
): Finding[] {
  const limit = lengthLimit(plan.plan.limits, "hole", HOLE_CLEAR);
  const near: number[] = [];
  let least: Nm = limit;
  // Only pieces that are no plain rectangles can hold a hole.
  for (const i of lay.pieces.shapes.keys()) {
    const piece = pieceBounds(lay.pieces, i);
    if (!overlaps(piece, box)) continue;
    const strip = thinnestStrip(lay.region, piece, box);
    if (strip >= limit) continue;
    near.push(i);
    least = Math.min(least, strip);
  }
  if (near.length === 0) return [];
  return [
    {
      origin: hole.origin,
      blocks: [lay.lay, lay.lay.tile, wall.wall],
      message:
        `hole ${hole.name} leaves ${lengthOff(plan, least, limit)} to the edge of ${pieceCount(near.length)}; ` +
        `at least ${length(plan, limit)} is wanted`,
      pieces: near.map((i) => pieceId(lay, i)),
    },
  ];
}

/** The thinnest strip between a hole and the piece's sides; Infinity when it crosses or touches them all. */
function thinnestStrip(region: Region, piece: Box, hole: Box): Nm {
  const { left, right, bottom, top } = region;
  const strips = [
    hole.left - Math.max(piece.left, rangeBetween(left, hole.bottom, hole.top).high),
    Math.min(piece.right, rangeBetween(right, hole.bottom, hole.top).low) - hole.right,
    hole.bottom - Math.max(piece.bottom, rangeBetween(bottom, hole.left, hole.right).high),
    Math.min(piece.top, rangeBetween(top, hole.left, hole.right).low) - hole.top,
  ];
  return Math.min(...strips.map((strip) => (strip > 0 ? strip : Infinity)));
}
