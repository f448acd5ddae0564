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

/** Walls in the order in which they are solved: one that another's start goes on from before that other. */
export function startOrder(walls: readonly Wall[]): Wall[] {
  const byName = new Map(walls.map((wall) => [wall.name, wall]));
  const order = new Set<Wall>();
  for (const wall of walls) {
    const waiting: Wall[] = [];
    let next: Wall | undefined = wall;
    while (next && !order.has(next) && !waiting.includes(next)) {
      waiting.push(next);
      const from = startedFrom(next);
      next = from === null ? undefined : byName.get(from);
    }
    for (const each of waiting.reverse()) order.add(each);
  }
  return [...order];
}

function startedFrom({ lays: [lay] }: Wall): string | null {
  return lay?.across && "wall" in lay.across ? lay.across.wall : null;
}
