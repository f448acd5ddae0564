import { type Edge, isCorner } from "../../model/index.js";
import type { SolvedWall } from "../../solver/index.js";

/**
 * The walls as one meets them going round the room from left to right: each group is joined by corners on which
 * both walls agree, and begins where no wall stands at its left; one that closes begins with its first wall of the plan.
 */
export function roomOrder(walls: readonly SolvedWall[]): readonly (readonly SolvedWall[])[] {
  const left = new Set(walls);
  const take = (first: SolvedWall): SolvedWall[] => {
    const group: SolvedWall[] = [];
    for (let at: SolvedWall | null = first; at && left.delete(at); at = rightOf(at, walls)) {
      group.push(at);
    }
    return group;
  };
  const beginnings = walls.filter((wall) => !walls.some((other) => rightOf(other, walls) === wall));
  return [...beginnings, ...walls]
    .filter((wall) => left.has(wall))
    .map(take)
    .filter((group) => group.length > 0);
}

/** Whether a group goes all the way round: its last wall's right meets its first one's left. */
export function closes(group: readonly SolvedWall[]): boolean {
  const [first, last] = [group[0], group.at(-1)];
  return first !== undefined && first !== last && rightOf(last!, group) === first;
}

/** The wall that is joined to this one's right by a corner; null where there is none. */
function rightOf({ wall }: SolvedWall, walls: readonly SolvedWall[]): SolvedWall | null {
  const { meets } = wall.edges.right;
  if (!isCorner(meets)) return null;
  const other = walls.find((each) => each.wall.name === meets.wall);
  return other && answers(other.wall.edges.left, wall.name) ? other : null;
}

function answers({ meets }: Edge, wall: string): boolean {
  return isCorner(meets) && meets.wall === wall;
}
