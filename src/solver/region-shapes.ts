import type { Side } from "../model/index.js";
import { circleRing } from "./clip/circle.js";
import { subtract } from "./clip/subtract.js";
import { ringOf, type Shape } from "./shape.js";
import { beyond, slopeOf } from "./slope.js";
import type { Region } from "./solved.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/**
 * A region as its connected parts, the lowest first: its sides, what openings take away and its round
 * holes, as pieces are cut by them. None where nothing is left of it.
 */
export function regionShapes(
  region: Pick<Region, Side | "bounds" | "takeaways" | "roundHoles">,
): Shape[] {
  const { bounds, takeaways, roundHoles } = region;
  if (bounds.left >= bounds.right || bounds.bottom >= bounds.top) return [];
  return subtract({ outline: ringOf(bounds), holes: [] }, [
    ...SIDES.map((side) => beyond(bounds, slopeOf(side, region[side], bounds))),
    ...takeaways.map(({ box }) => ringOf(box)),
    ...roundHoles.map(({ box }) => circleRing(box)),
  ]);
}
