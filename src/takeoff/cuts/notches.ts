import type { Side } from "../../model/index.js";
import { type Box, overlaps, pieceBounds, type SolvedLay } from "../../solver/index.js";
import type { Notch } from "../takeoff.js";
import { riserBites } from "./riser-bites.js";
import { tileFrame, withinTile } from "./tile-frame.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** What openings, steps and risers take out of a piece, as far as they reach into its bounds. */
export function notchesOf(lay: SolvedLay, i: number): Notch[] {
  if (!lay.pieces.shapes.has(i)) return [];
  const piece = pieceBounds(lay.pieces, i);
  const frame = tileFrame(lay, i);
  const { takeaways, steps } = lay.region;
  return [...takeaways.map(({ box }) => box), ...steps, ...riserBites(lay.region, piece)]
    .filter((box) => overlaps(box, piece))
    .map((box) => {
      const bite: Box = {
        left: Math.max(box.left, piece.left),
        bottom: Math.max(box.bottom, piece.bottom),
        right: Math.min(box.right, piece.right),
        top: Math.min(box.top, piece.top),
      };
      const opens = SIDES.filter((side) => bite[side] === piece[side]);
      return { opens, box: withinTile(bite, frame) };
    });
}
