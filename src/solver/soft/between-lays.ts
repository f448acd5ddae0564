import type { Side } from "../../model/index.js";
import { type Box, grown } from "../box.js";
import { cutTile, type Obstacles } from "../cut-tile.js";
import { inPlacingOrder } from "../lay-order.js";
import { jointBetween, placedBy } from "../lay-region.js";
import { ringOf } from "../shape.js";
import type { Region, SolvedLay, SolvedWall } from "../solved.js";
import type { SoftPart, SoftRun } from "./soft-run.js";

/** The joint along one side of a lay to another one that was laid after it. */
export interface LayStrip {
  readonly earlier: SolvedLay;
  readonly later: SolvedLay;
  /** The earlier one's side. */
  readonly side: Side;
  readonly box: Box;
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** The joints between the lays of a wall, stretch by stretch as both have tile beside them. */
export function layStrips({ wall, lays }: SolvedWall): LayStrip[] {
  const order = inPlacingOrder(wall.lays);
  const placed = [...lays].sort((a, b) => order.indexOf(a.lay) - order.indexOf(b.lay));
  return placed.flatMap((earlier, i) =>
    placed
      .slice(i + 1)
      .flatMap((later) => SIDES.flatMap((side) => stripsAlong(earlier, later, side))),
  );
}

/** Where the later lay begins just past the joint along one side of the earlier one. */
function stripsAlong(earlier: SolvedLay, later: SolvedLay, side: Side): LayStrip[] {
  const placed = placedBy(earlier.lay, earlier);
  const joint = jointBetween(later.lay, later.joint, placed);
  const inner = placed.box;
  const outer = grown(inner, joint);
  const beside = cutTile(justPast(side, inner, outer), later.region, obstaclesOf(later.region));
  return beside.map(({ bounds }) => ({
    earlier,
    later,
    side,
    box: stretchOf(side, bounds, inner, outer),
  }));
}

/** A strip of one nanometre past a joint; upright ones go round the corners of a lay with tile on both of its sides. */
function justPast(side: Side, inner: Box, outer: Box): Box {
  switch (side) {
    case "left":
      return { ...outer, left: outer.left - 1, right: outer.left };
    case "right":
      return { ...outer, left: outer.right, right: outer.right + 1 };
    case "bottom":
      return { ...inner, bottom: outer.bottom - 1, top: outer.bottom };
    case "top":
      return { ...inner, bottom: outer.top, top: outer.top + 1 };
  }
}

/** The joint beside a stretch of tile. */
function stretchOf(side: Side, along: Box, inner: Box, outer: Box): Box {
  switch (side) {
    case "left":
      return { ...along, left: outer.left, right: inner.left };
    case "right":
      return { ...along, left: inner.right, right: outer.right };
    case "bottom":
      return { ...along, bottom: outer.bottom, top: inner.bottom };
    case "top":
      return { ...along, bottom: inner.top, top: outer.top };
  }
}

/** What of a strip lies in a region, without some boxes. */
export function partsIn(
  lay: SolvedLay | null,
  region: Region,
  box: Box,
  without: readonly Box[],
): SoftPart[] {
  const { boxes, circles } = obstaclesOf(region);
  return cutTile(box, region, { boxes: [...boxes, ...without], circles }).map(
    ({ bounds, shape }) => ({
      lay,
      bounds,
      shape: shape ?? { outline: ringOf(bounds), holes: [] },
    }),
  );
}

function obstaclesOf({ takeaways, steps, roundHoles }: Region): Obstacles {
  return {
    boxes: [...takeaways.map(({ box }) => box), ...steps],
    circles: roundHoles.map(({ box }) => box),
  };
}

/** Whether a strip is upright, its two sides, and from where to where it goes. */
export function runOf({ side, box }: LayStrip): Pick<SoftRun, "way" | "from" | "to" | "reach"> {
  const { left, right, bottom, top } = box;
  if (side === "left" || side === "right")
    return { way: "upright", from: left, to: right, reach: { from: bottom, to: top } };
  return { way: "level", from: bottom, to: top, reach: { from: left, to: right } };
}
