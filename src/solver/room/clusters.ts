import type { Wall } from "../../model/index.js";
import type { CornerPair } from "./corners.js";

/** Walls that are laid with one tile in one range of joints: they get one joint. */
export interface JointGroup {
  /** The walls' numbers. */
  readonly walls: readonly number[];
}

/** Walls that hang together: by a joint that is left open, or by courses that are wanted to meet. */
export interface Cluster {
  readonly groups: readonly JointGroup[];
  /** The walls' numbers, in their order. */
  readonly walls: readonly number[];
}

/** The laid walls in clusters; `links` are the corners at which courses are wanted to meet. */
export function clustersOf(walls: readonly Wall[], links: readonly CornerPair[]): Cluster[] {
  const groups = groupsOf(walls);
  const parts = partsOf(
    walls.flatMap((wall, i) => (wall.lays.length > 0 ? [i] : [])),
    [...links.map(({ a, b }) => [a, b]), ...groups.map((group) => group.walls)],
  );
  return parts.map((part) => ({
    walls: part,
    groups: groups.filter((group) => part.includes(group.walls[0]!)),
  }));
}

/** Numbers in the parts that these ties hold together, each in rising order. */
export function partsOf(
  numbers: readonly number[],
  ties: readonly (readonly number[])[],
): number[][] {
  const part = new Map(numbers.map((number) => [number, number]));
  for (const [first, ...others] of ties) {
    for (const other of others) {
      const [into, from] = [part.get(first!)!, part.get(other)!];
      for (const [number, own] of part) if (own === from) part.set(number, into);
    }
  }
  const parts = new Map<number, number[]>();
  for (const [number, own] of part) parts.set(own, [...(parts.get(own) ?? []), number]);
  return [...parts.values()];
}

function groupsOf(walls: readonly Wall[]): JointGroup[] {
  const groups = new Map<string, number[]>();
  walls.forEach(({ lays: [lay] }, i) => {
    if (!lay) return;
    const { tile, joint } = lay;
    const key = joint.min < joint.max ? `${tile.name} ${joint.min} ${joint.max}` : `${i}`;
    groups.set(key, [...(groups.get(key) ?? []), i]);
  });
  return [...groups.values()].map((each) => ({ walls: each }));
}
