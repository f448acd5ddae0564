import type { Nm } from "../measure/index.js";
import type { Side } from "../model/index.js";
import {
  type Box,
  offJoint,
  pieceBounds,
  pieceId,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  type Takeaway,
} from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { SIDES } from "./side-line.js";
import { tileOf } from "./tile-of.js";
import { COMMON_PRACTICE } from "./trade.js";
import { length } from "./words.js";

/**
 * A niche whose sides cut into tiles instead of falling on joints. It is the one opening that is
 * placed after the layout. In a running bond an upright side can be on the joints of some courses
 * only: it counts as on a joint when it is in line with one beside it.
 */
export const openingOffJoint: Rule = {
  code: "opening/off-joint",
  severity: "warning",
  title: "a niche's sides do not fall on joints of the field",
  source: COMMON_PRACTICE,
  limit: "niche",
  check: (wall, plan) =>
    wall.lays.flatMap((lay) =>
      lay.region.takeaways
        .filter(({ opening }) => opening.kind === "niche")
        .flatMap((takeaway) => findOff(wall, plan, lay, takeaway)),
    ),
};

/** A side of a niche that cuts pieces, and how far the nearest joint is. */
interface OffSide {
  readonly side: Side;
  readonly pieces: readonly number[];
  readonly off: Nm;
}

function findOff(
  wall: SolvedWall,
  plan: SolvedPlan,
  lay: SolvedLay,
  { opening, box }: Takeaway,
): Finding[] {
  const sides = SIDES.flatMap((side): OffSide[] => {
    const pieces = cutBy(lay, box, side);
    const off = pieces.length === 0 ? 0 : offJoint(lay, box, side);
    return off === 0 ? [] : [{ side, pieces, off }];
  });
  if (sides.length === 0) return [];
  const found = sides.map(({ side, off }) => `its ${side} by ${length(plan, off)}`).join(", ");
  const pieces = [...new Set(sides.flatMap((side) => side.pieces))].sort((a, b) => a - b);
  return [
    {
      origin: opening.origin,
      blocks: [opening, lay.lay, lay.lay.tile, wall.wall],
      message: `niche ${opening.name} is off the joints: ${found}; each side on a joint is wanted`,
      pieces: pieces.map((i) => pieceId(lay, i)),
    },
  ];
}

/** The pieces into whose tiles a side of the box cuts. */
function cutBy(lay: SolvedLay, box: Box, side: Side): number[] {
  const found: number[] = [];
  const line = box[side];
  const upright = side === "left" || side === "right";
  for (let i = 0; i < lay.pieces.count; i++) {
    if (lay.pieces.cut[i] === 0) continue;
    const piece = pieceBounds(lay.pieces, i);
    const beside = upright
      ? piece.bottom < box.top && box.bottom < piece.top
      : piece.left < box.right && box.left < piece.right;
    if (!beside || !stopsAt(piece, box, side)) continue;
    const tile = tileOf(lay, i);
    const cut = upright
      ? tile.left < line && line < tile.right
      : tile.bottom < line && line < tile.top;
    if (cut) found.push(i);
  }
  return found;
}

/** Whether a piece lies outside the box's side, and reaches it. */
function stopsAt(piece: Box, box: Box, side: Side): boolean {
  switch (side) {
    case "left":
      return piece.left < box.left && piece.right >= box.left;
    case "right":
      return piece.right > box.right && piece.left <= box.right;
    case "bottom":
      return piece.bottom < box.bottom && piece.top >= box.bottom;
    case "top":
      return piece.top > box.top && piece.bottom <= box.top;
  }
}
