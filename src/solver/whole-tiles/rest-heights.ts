import type { Nm } from "../../measure/index.js";
import { isSolid, type Opening } from "../../model/index.js";
import { moduleUp } from "../lattice.js";
import type { SolvedLay, SolvedWall } from "../solved.js";

/** Heights, from the level line, at which no course is ripped along a bench's or a curb's top, or a soffit's bottom. */
export interface RestHeights {
  readonly edge: "top" | "bottom";
  /** Whether none is as it is. */
  readonly isWhole: boolean;
  /** The nearest ones under and over it; null where the thing would end there, or the tile. */
  readonly below: Nm | null;
  readonly above: Nm | null;
}

/**
 * Works back from the tile to what stands before the wall: courses begin whole over a bench and a curb, and
 * end whole under a soffit, a joint of its own off them. null of anything else.
 */
export function restHeights(
  { region }: SolvedWall,
  { lattice, region: own }: SolvedLay,
  opening: Opening,
): RestHeights | null {
  const box = region.takeaways.find((taken) => taken.opening === opening)?.box;
  if (!isSolid(opening) || !box) return null;
  const { at, size } = opening;
  const [low, high] = [at.y, at.y + size.up];
  const module = moduleUp(lattice);
  const isTop = opening.kind !== "soffit";
  const [edge, joint] = isTop ? [high, box.top - high] : [low, box.bottom - low];
  const first = lattice.y + (isTop ? 0 : lattice.face.up) - joint;
  const steps = Math.floor((edge - first) / module);
  const isWhole = first + steps * module === edge;
  const below = first + (isWhole ? steps - 1 : steps) * module;
  const above = first + (steps + 1) * module;
  const isBetween = (height: Nm): boolean =>
    isTop
      ? height > low && height + joint < own.bounds.top
      : height < high && height + joint > own.bounds.bottom;
  return {
    edge: isTop ? "top" : "bottom",
    isWhole,
    below: isBetween(below) ? below : null,
    above: isBetween(above) ? above : null,
  };
}
