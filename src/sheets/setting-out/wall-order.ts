import { isCorner } from "../../model/index.js";
import type { SolvedWall } from "../../solver/index.js";

/**
 * Walls in the order in which they are set: a wall whose end another wall's tile covers comes before
 * that other. Else the plan's own order; where walls cover each other in a ring, too.
 */
export function wallOrder(walls: readonly SolvedWall[]): SolvedWall[] {
  const left = [...walls];
  const order: SolvedWall[] = [];
  while (left.length > 0) {
    const next = left.findIndex((wall) => !left.some((other) => comesBefore(other, wall)));
    order.push(...left.splice(Math.max(0, next), 1));
  }
  return order;
}

/** Whether `wall`'s tile covers an end of `first`, as either of the two says. */
export function comesBefore({ wall: first }: SolvedWall, { wall }: SolvedWall): boolean {
  const says = (edges: typeof wall.edges, other: string, lap: "under" | "over") =>
    [edges.left, edges.right].some(
      ({ meets }) => isCorner(meets) && meets.wall === other && meets.lap === lap,
    );
  if (first === wall) return false;
  return says(first.edges, wall.name, "under") || says(wall.edges, first.name, "over");
}
