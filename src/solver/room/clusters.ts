import type { Lay, Wall } from "../../model/index.js";
import type { CornerPair } from "./corners.js";

/** Walls that get one joint: they are laid with one tile in one range of joints, or from one block. */
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
  const laid = walls.flatMap(({ lays: [lay] }, i) => (lay ? [{ i, lay }] : []));
  return jointGroups(laid.map(({ lay }) => lay)).map((group) => ({
    walls: group.map((k) => laid[k]!.i),
  }));
}

/** Whether some lays of a block share a range of joints, so that they are weighed together. */
export function isSharingJoint({ lays }: Wall): boolean {
  const isRange = ({ joint }: Lay) => joint.min < joint.max;
  return lays.some(
    (lay, i) =>
      isRange(lay) &&
      lays.some((other, k) => k > i && isRange(other) && other.origin === lay.origin),
  );
}

/**
 * The numbers of lays that get one joint: those of one tile in one range, and those of one block, which states one joint
 * for all its tiles. A lay whose joint is stated is by itself.
 */
export function jointGroups(lays: readonly Lay[]): number[][] {
  const first = new Map<unknown, number>();
  const ties = lays.flatMap(({ tile, joint, origin }, i): number[][] => {
    if (joint.min === joint.max) return [];
    return [origin, `${tile.name} ${joint.min} ${joint.max}`].map((key) => {
      const known = first.get(key) ?? i;
      first.set(key, known);
      return [known, i];
    });
  });
  return partsOf(
    lays.map((_, i) => i),
    ties,
  );
}
