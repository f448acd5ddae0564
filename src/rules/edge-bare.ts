import { type Riser, showsEnd, type Side } from "../model/index.js";
import {
  type Box,
  overlaps,
  pieceBounds,
  pieceId,
  type SolvedLay,
  type SolvedWall,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { sideInside, SIDES } from "./side-line.js";
import { tileOf } from "./tile-of.js";
import { COMMON_PRACTICE } from "./trade.js";
import { pieceCount, verb } from "./words.js";

/**
 * A cut edge that is left to be seen: on a side that is free, or laps over an outside corner, without trim, on
 * the steps and slopes of an outline too.
 */
export const edgeBare: Rule = {
  code: "edge/bare",
  severity: "warning",
  title: "a cut edge is left bare on a free side, or over an outside corner, without trim",
  source: COMMON_PRACTICE,
  limit: "bare",
  insides: "each",
  check: (wall) => SIDES.flatMap((side) => wall.lays.flatMap((lay) => findBare(wall, lay, side))),
};

function findBare(wall: SolvedWall, lay: SolvedLay, side: Side): Finding[] {
  const edge = wall.wall.edges[side];
  const isOwn = showsEnd(edge.meets) && !lay.inner.includes(side);
  const steps = bareStepSides(wall, side);
  if (!isOwn && steps.length === 0) return [];
  const bare: number[] = [];
  for (let i = 0; i < lay.pieces.count; i++) {
    if (lay.pieces.cut[i] === 0) continue;
    if ((isOwn && cutAtSide(lay, i, side)) || steps.some((step) => cutAtStep(lay, i, step))) {
      bare.push(i);
    }
  }
  if (bare.length === 0) return [];
  const n = bare.length;
  const place = edge.meets.kind === "outside" ? "outside corner at the" : "free";
  return [
    {
      origin: edge.origin,
      blocks: [lay.lay, lay.lay.tile, wall.wall],
      message:
        `${pieceCount(n)} ${verb(n, "shows a cut edge", "show cut edges")} at the ${place} ${side}; ` +
        `trim, or the tile's own edge, is wanted there`,
      pieces: bare.map((i) => pieceId(lay, i)),
    },
  ];
}

/** A side of a step in the outline, and what the step takes from the tile. */
interface StepSide {
  readonly side: Side;
  readonly box: Box;
}

/** The sides of steps, and the risers, that are of one side of the wall, and at which tile ends with nothing before it. */
function bareStepSides({ wall, region }: SolvedWall, of: Side): StepSide[] {
  const risers = wall.risers
    .filter(({ edge }) => edge.side === of && showsEnd(edge.meets))
    .map((riser) => riserSide(riser, region.bounds));
  const steps = wall.steps.flatMap(({ meets }, i) =>
    SIDES.filter((side) => {
      const edge = meets[side];
      return edge !== null && edge.side === of && showsEnd(edge.meets);
    }).map((side) => ({ side, box: region.steps[i]! })),
  );
  return [...risers, ...steps];
}

/** A riser as the side of what lies behind it, where nothing stands before the tile. */
function riserSide({ x, low, high, edge }: Riser, { left, right }: Box): StepSide {
  return edge.side === "left"
    ? { side: "right", box: { left: Math.min(left, x) - 1, bottom: low, right: x, top: high } }
    : { side: "left", box: { left: x, bottom: low, right: Math.max(right, x) + 1, top: high } };
}

/** Whether a step cuts into a piece's tile, and the piece ends at that side of it, or is notched round it. */
function cutAtStep(lay: SolvedLay, i: number, { side, box }: StepSide): boolean {
  if (!overlaps(tileOf(lay, i), box)) return false;
  const piece = pieceBounds(lay.pieces, i);
  const isBeside = piece.bottom < box.top && box.bottom < piece.top;
  const isOver = piece.left < box.right && box.left < piece.right;
  switch (side) {
    case "left":
      return isBeside && piece.left < box.left && piece.right >= box.left;
    case "right":
      return isBeside && piece.right > box.right && piece.left <= box.right;
    case "bottom":
      return isOver && piece.bottom < box.bottom && piece.top >= box.bottom;
    case "top":
      return isOver && piece.top > box.top && piece.bottom <= box.top;
  }
}

/** Whether a piece reaches the wall's side, and the side cuts into its tile. */
function cutAtSide(lay: SolvedLay, i: number, side: Side): boolean {
  const { region } = lay;
  const piece = pieceBounds(lay.pieces, i);
  const reaches = sideInside(region[side], piece, side, piece).deepest >= 0;
  return reaches && sideInside(region[side], tileOf(lay, i), side, piece).deepest > 0;
}
