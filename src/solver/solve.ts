import type { Lay, Plan, Wall } from "../model/index.js";
import { choose } from "./choose/choose.js";
import { cellsWithin, latticeOf } from "./lattice.js";
import { layPieces } from "./pieces.js";
import { regionOf } from "./region.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "./solved.js";
import { acrossOrigin, upOrigin } from "./start.js";
import { layFrame } from "./trim/frame.js";
import { layFreeEdges } from "./trim/free-edge.js";

/** The most pieces a plan may ask for; a wall that would go past it is left unlaid. */
export const MOST_PIECES = 2_000_000;

/** Lays every wall of a plan. Never throws; a wall without a lay has its region and no pieces. */
export function solve(plan: Plan): SolvedPlan {
  let left = MOST_PIECES;
  const walls = plan.walls.map((wall) => {
    const asked = wall.lay ? askedPieces(plan, wall, wall.lay) : 0;
    if (asked > left) return bareWall(plan, wall, asked);
    left -= asked;
    return solveWall(plan, wall);
  });
  return { plan, walls };
}

/** How many pieces a wall may come to, before any is laid. */
function askedPieces(plan: Plan, wall: Wall, lay: Lay): number {
  const joint = lay.joint.min;
  return cellsWithin(latticeOf(lay, joint, 0, 0), regionOf(plan, wall, joint).bounds);
}

function bareWall(plan: Plan, wall: Wall, asked: number | null): SolvedWall {
  const joint = wall.lay?.joint.min ?? 0;
  return {
    wall,
    region: regionOf(plan, wall, joint),
    lays: [],
    trims: [],
    refused: asked === null ? null : { pieces: asked, most: MOST_PIECES },
  };
}

function solveWall(plan: Plan, wall: Wall): SolvedWall {
  const { lay } = wall;
  if (!lay) return bareWall(plan, wall, null);
  const { joint, across, up, choice } = choose(plan, wall, lay);
  const region = regionOf(plan, wall, joint);
  const ground = { wall, region, lay, joint };
  const start = latticeOf(lay, joint, acrossOrigin(ground, across), upOrigin(ground, up));
  const { lattice, courses, pieces } = layPieces(region, start);
  const solved: SolvedLay = { lay, joint, across, up, lattice, courses, pieces, choice };
  const frames = wall.openings.flatMap((opening) => layFrame(opening, region, joint));
  const trims = [...frames, ...layFreeEdges(wall, region, joint)];
  return { wall, region, lays: [solved], trims, refused: null };
}
