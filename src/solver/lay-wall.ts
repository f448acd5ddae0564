import type { Lay, Plan, Wall } from "../model/index.js";
import type { Chosen } from "./choose/index.js";
import { latticeOf } from "./lattice.js";
import { layPieces } from "./pieces.js";
import { regionOf } from "./region.js";
import type { SolvedLay, SolvedWall } from "./solved.js";
import { acrossOrigin, upOrigin } from "./start.js";
import { layFrame } from "./trim/frame.js";
import { layFreeEdges } from "./trim/free-edge.js";

/** Lays a wall from a start that is settled: its region, pieces and trims. */
export function layWall(plan: Plan, wall: Wall, lay: Lay, chosen: Chosen): SolvedWall {
  const { joint, across, up, choice } = chosen;
  const region = regionOf(plan, wall, joint);
  const ground = { wall, region, lay, joint };
  const start = latticeOf(lay, joint, acrossOrigin(ground, across), upOrigin(ground, up));
  const { lattice, courses, pieces } = layPieces(region, start);
  const solved: SolvedLay = { lay, joint, across, up, lattice, courses, pieces, choice };
  const frames = wall.openings.flatMap((opening) => layFrame(opening, region, joint));
  const trims = [...frames, ...layFreeEdges(wall, region, joint)];
  return { wall, region, lays: [solved], trims, refused: null };
}
