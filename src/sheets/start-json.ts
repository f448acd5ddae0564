import { divideRounded, toMillimetres } from "../measure/index.js";
import type { UpStart } from "../model/index.js";
import {
  doubledCentre,
  type SettledStart,
  type SolvedLay,
  type SolvedWall,
  upOrigin,
} from "../solver/index.js";

/**
 * Where course 1 starts: the middle of a tile or joint, or the edge of the tile at one end; of a start that
 * goes on from another wall, the inner edge of the tile at the corner.
 */
export interface AcrossJson {
  readonly mode: "tile" | "joint" | "left" | "right" | "wrapped" | "mirrored";
  readonly at: number;
  /** The wall that it goes on from; left out where it starts by itself. */
  readonly from?: string;
  /** Of a wrapped bond: whether the corner's joint is added to the tile or swallowed by it. */
  readonly joint?: "added" | "swallowed";
}

/** Where the courses stand: the bottom of the course that is spoken of, or a joint's middle. */
export interface UpJson {
  readonly mode: "course" | "joint";
  readonly at: number;
}

export function acrossJson(
  { wall }: SolvedWall,
  { region, lattice }: SolvedLay,
  start: SettledStart,
): AcrossJson {
  if ("x" in start) {
    const at = toMillimetres(start.corner === "left" ? start.x + lattice.face.across : start.x);
    const joint = start.kind === "wrapped" ? { joint: start.joint } : {};
    return { mode: start.kind, at, from: start.wall, ...joint };
  }
  if (start.kind === "full-tile") {
    return { mode: start.from, at: toMillimetres(region.bounds[start.from]) };
  }
  const middle = divideRounded(doubledCentre(wall, start.centre), 2);
  return { mode: start.kind, at: toMillimetres(middle) };
}

export function upJson(
  { wall, region: whole }: SolvedWall,
  solved: SolvedLay,
  start: UpStart,
): UpJson {
  if (start.kind === "joint") return { mode: "joint", at: toMillimetres(start.y) };
  // Set courses are started in all that their lay has, of which they leave the rest.
  const region = solved.stand ? whole : solved.region;
  const ground = { wall, region, lay: solved.lay, joint: solved.joint };
  return { mode: "course", at: toMillimetres(upOrigin(ground, start)) };
}
