import type { Opening } from "../../model/index.js";
import {
  bareSide,
  doubleRegionArea,
  openingBox,
  rangeBetween,
  type SolvedWall,
} from "../../solver/index.js";
import type { MembraneTakeoff } from "../takeoff.js";
import { doubleSetArea } from "./set-areas.js";

/**
 * The bare wall behind the tile, less its windows and doors; behind a bench, a curb or a soffit it goes on.
 * A niche's back is as large as its opening, so that it counts, and its four sides where the plan says how
 * deep they are; so do a window's where they are tiled. Behind tile that is set it stands, all over the wall:
 * it goes on before the tile.
 */
export function membraneOf(solved: SolvedWall): MembraneTakeoff {
  const { wall, region } = solved;
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
  const doubleNicheSides = wall.openings.reduce((sum, opening) => sum + doubleSides(opening), 0n);
  return {
    wall: name,
    doubleArea: doubleRegionArea(bare) + doubleNicheSides,
    doubleNicheSides,
    stands: doubleSetArea(solved) > 0n,
  };
}

/**
 * Twice the area of a niche's or a window's four sides, as if its sill were level: one that falls towards the room
 * takes from the back and the sides at least as much as it is longer.
 */
function doubleSides({ kind, inside, size }: Opening): bigint {
  if (!inside || (kind !== "niche" && !(kind === "window" && inside.tiled))) return 0n;
  return 4n * BigInt(size.across + size.up) * BigInt(inside.depth);
}
