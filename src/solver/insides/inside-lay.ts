import type { Nm } from "../../measure/index.js";
import type { Bond, Inside, InsideFace, Lay, Opening, Tile } from "../../model/index.js";
import type { SolvedLay } from "../solved.js";

/** The lay of a surface inside an opening: where the plan states its start, its `InsideLay` has it. */
export type LiningLay = Lay & { readonly across: null; readonly up: null };

/**
 * How a surface inside an opening is laid: as the wall round it, but for what the plan says of it. The
 * sides are stacked unless it says otherwise, so that each of their courses has an edge of the factory's at the front.
 */
export function insideLay(
  opening: Opening,
  { lays }: Inside,
  face: InsideFace,
  { lay, joint }: SolvedLay,
): LiningLay {
  const own = lays[face];
  const origin = own?.origin ?? opening.origin;
  const tile: Tile = own?.tile ?? lay.tile;
  const width: Nm = own?.joint ?? joint;
  const usual: Bond = face === "left" || face === "right" ? { kind: "stack" } : lay.bond;
  return {
    name: tile.name,
    area: null,
    goesOnFrom: null,
    set: null,
    soft: [],
    tile,
    bond: own?.bond ?? usual,
    joint: { min: width, max: width, origin },
    across: null,
    up: null,
    allows: [...(own?.allows ?? []), ...opening.allows],
    origin,
  };
}
