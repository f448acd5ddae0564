import type { Wall } from "../model/index.js";
import type { SolvedWall } from "./solved.js";

/** Solves walls in the order that their starts need, each knowing those before it; in the plan's order again. */
export function solveInOrder(
  walls: readonly Wall[],
  solveOne: (wall: Wall, place: number, solved: ReadonlyMap<string, SolvedWall>) => SolvedWall,
): SolvedWall[] {
  const solved = new Map<string, SolvedWall>();
  for (const wall of startOrder(walls)) {
    solved.set(wall.name, solveOne(wall, walls.indexOf(wall), solved));
  }
  return walls.map(({ name }) => solved.get(name)!);
}

/** Walls in the order in which they are solved: one that another's start goes on from before that other; several may stand for the lays of one. */
export function startOrder(walls: readonly Wall[]): Wall[] {
  const seen = new Set<Wall>();
  const order: Wall[] = [];
  const visit = (wall: Wall): void => {
    if (seen.has(wall)) return;
    seen.add(wall);
    for (const from of startedFrom(wall)) {
      walls.filter(({ name }) => name === from).forEach(visit);
    }
    order.push(wall);
  };
  walls.forEach(visit);
  return order;
}

/** The walls that a wall's lays go on from, in the order of its lays. */
function startedFrom({ lays }: Wall): string[] {
  return lays.flatMap(({ across }) => (across && "wall" in across ? [across.wall] : []));
}
