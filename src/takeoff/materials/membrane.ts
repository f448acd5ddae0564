import {
  bareSide,
  doubleRegionArea,
  openingBox,
  rangeBetween,
  type SolvedWall,
} from "../../solver/index.js";
import type { Materials } from "../takeoff.js";

/**
 * The bare wall behind the tile, less its windows and doors; behind a bench, a curb or a soffit it goes on. A niche's back is as large as its opening, so that it
 * counts; how deep its sides are the plan doesn't say.
 */
export function membraneOf({ wall, region }: SolvedWall): Materials["membrane"][number] {
  const { edges, size, name } = wall;
  const left = bareSide(edges.left, 0);
  const right = bareSide(edges.right, size.across);
  const bottom = bareSide(edges.bottom, 0);
  const top = bareSide(edges.top, size.up);
  const lowest = Math.min(0, ...bottom.value);
  const from = rangeBetween(left, lowest, size.up).low;
  const to = rangeBetween(right, lowest, size.up).high;
  const floor = Math.min(...bottom.value);
  const takeaways = region.takeaways
    .filter(({ opening }) => opening.kind === "window" || opening.kind === "door")
    .map(({ opening }) => {
      const box = openingBox(opening);
      const down = Math.min(box.bottom, floor);
      return { opening, box: opening.kind === "door" ? { ...box, bottom: down } : box };
    });
  const bounds = {
    left: from,
    right: to,
    bottom: rangeBetween(bottom, from, to).low,
    top: rangeBetween(top, from, to).high,
  };
  const bare = { left, right, bottom, top, bounds, takeaways, roundHoles: [], steps: wall.steps };
  return { wall: name, doubleArea: doubleRegionArea(bare) };
}
