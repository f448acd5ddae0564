import type { Nm } from "../../measure/index.js";
import { edgeTrim, type Opening, type Side, type Wall } from "../../model/index.js";
import { type Box, grown } from "../box.js";
import { stepInset } from "../region.js";
import { ringOf, type Ring } from "../shape.js";
import type { Region } from "../solved.js";
import { outerLine } from "./end-lines.js";

/** Where the trim along a side that slopes is laid. */
export interface SlopedSide {
  readonly wall: Wall;
  readonly region: Region<Opening>;
  readonly joint: Nm;
  readonly side: Side;
  /** How wide the trim is. */
  readonly width: Nm;
}

/** A straight part of the trim's outer edge, in the side's own direction: place along it, and value. A riser has no run. */
export interface Part {
  readonly at: Nm;
  readonly value: Nm;
  readonly run: Nm;
  readonly rise: Nm;
}

/** The parts of a side's outer edge. Where the region goes on past the wall's own end, round an outside corner, it goes on level. */
export function partsOf(ground: SlopedSide): Part[] {
  const { wall, region, joint, side, width } = ground;
  const { at, value } = outerLine(wall, region, side, joint);
  const { left, right } = region.bounds;
  const isLevel = !isUprightSide(side);
  const before = isLevel && left < 0 && at[0] === 0 ? [[left - width, value[0]!] as const] : [];
  const past = isLevel && right > wall.size.across && at.at(-1) === wall.size.across;
  const after = past ? [[right + width, value.at(-1)!] as const] : [];
  const points = [...before, ...at.map((place, i) => [place, value[i]!] as const), ...after];
  return points.slice(1).map(([end, high], i) => {
    const [start, low] = points[i]!;
    return { at: start, value: low, run: end - start, rise: high - low };
  });
}

/**
 * What lies past a part's ends where no other slope goes on from it. At the foot of a riser trim ends where tile does; over a riser it stands behind the riser's own trim, a joint off it, or as far off the tile beside it.
 */
export function pastEnds(
  ground: SlopedSide,
  [before, after]: readonly [Part | undefined, Part | undefined],
  box: Box,
): Ring[] {
  const wide = grown(box, 1);
  const start = before && endBeside(ground, before, "after");
  const end = after && endBeside(ground, after, "before");
  return [
    ...(start === undefined ? [] : [{ ...wide, right: start }]),
    ...(end === undefined ? [] : [{ ...wide, left: end }]),
  ]
    .filter(({ left, right }) => left < right)
    .map(ringOf);
}

/** Up to where the trim that stands before or after a riser goes; undefined beside a slope, where it is mitred. */
function endBeside(
  { wall, joint, side }: SlopedSide,
  { at, rise, run }: Part,
  stands: "before" | "after",
): Nm | undefined {
  if (run > 0) return undefined;
  const isFalling = rise * inwardOf(side) < 0;
  const riser = wall.risers.find(({ of, x }) => of === side && x === at);
  const inset = riser ? stepInset(riser.edge, joint) : 0;
  const isOver = isFalling === (stands === "before");
  const behind = (riser && edgeTrim(riser.edge.meets) ? 0 : inset) - joint;
  return at + (isFalling ? 1 : -1) * (isOver ? behind : inset);
}

/** 1 where a side's inward is to greater values, -1 where it is to lesser ones. */
export function inwardOf(side: Side): 1 | -1 {
  return side === "left" || side === "bottom" ? 1 : -1;
}

export function isUprightSide(side: Side): side is "left" | "right" {
  return side === "left" || side === "right";
}
