import type { Box } from "../box.js";
import type { Tally } from "../choose/cell.js";
import type { Effort } from "../choose/effort.js";
import type { Field } from "../choose/field.js";
import { type Standing, tallyAt } from "./local-tally.js";

/** What changes in the tiles round boxes when these are cut out of a field. */
export function cutOut(
  field: Field,
  boxes: readonly Box[],
  standing: Standing,
  effort: Effort,
): Tally {
  const around = boxes.reduce((a, b) => ({
    left: Math.min(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
    top: Math.max(a.top, b.top),
  }));
  const cut = {
    ...field,
    boxes: [...field.boxes, ...boxes],
    obstacles: [...field.obstacles, ...boxes],
  };
  const before = tallyAt(field, standing, around, effort);
  const after = tallyAt(cut, standing, around, effort);
  return {
    slivers: after.slivers - before.slivers,
    underHalf: after.underHalf - before.underHalf,
    cuts: after.cuts - before.cuts,
    tiles: after.tiles - before.tiles,
  };
}
