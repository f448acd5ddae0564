import { buildRoomScene, type Scene } from "../drawing/index.js";
import { isCorner } from "../model/index.js";
import type { SolvedPlan } from "../solver/index.js";

/** Whether a corner joins walls of a plan. */
export function isJoined({ walls }: SolvedPlan): boolean {
  const names = new Set(walls.map(({ wall }) => wall.name));
  return walls.some(({ wall: { edges } }) =>
    [edges.left, edges.right].some(({ meets }) => isCorner(meets) && names.has(meets.wall)),
  );
}

/**
 * The room unfolded, as a preview shows it: with the pieces of each wall as its own picture draws them, and
 * those marked that findings speak of.
 */
export function roomPicture(solved: SolvedPlan, drawn: Scene): Scene {
  const room = buildRoomScene(solved);
  const walls = room.walls.map((wall) => {
    const own = drawn.walls.find(({ name }) => name === wall.name);
    return own ? { ...wall, pieces: own.pieces, marks: own.marks } : wall;
  });
  return { ...room, walls };
}
