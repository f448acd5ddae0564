import type { Side } from "../model/index.js";
import { overlaps, type Box } from "./box.js";
import { cutTile, type Obstacles } from "./cut-tile.js";
import { doubleShapeArea, ringOf } from "./shape.js";
import type { Region } from "./solved.js";

/** Cutting costs as the square of what meets in one place, so that a stretch with more is halved first ... */
const MOST_TOGETHER = 4;
/** ... but not for ever: what still meets in a four-thousandth of the wall is cut together. */
const MOST_HALVINGS = 12;

/** What of a region decides its area. */
export type Bounded = Pick<Region, Side | "bounds" | "takeaways" | "roundHoles" | "steps">;

/** Twice the area of a region in nm²: cut by its sides, openings and round holes as pieces are cut by them. */
export function doubleRegionArea(region: Bounded): bigint {
  const boxes = [...region.takeaways.map(({ box }) => box), ...region.steps];
  const circles = region.roundHoles.map(({ box }) => box);
  return areaWithin(region.bounds, region, { boxes, circles }, MOST_HALVINGS);
}

function areaWithin(
  box: Box,
  region: Bounded,
  { boxes, circles }: Obstacles,
  halvings: number,
): bigint {
  const near: Obstacles = {
    boxes: boxes.filter((each) => overlaps(each, box)),
    circles: circles.filter((each) => overlaps(each, box)),
  };
  if (halvings > 0 && near.boxes.length + near.circles.length > MOST_TOGETHER) {
    return halvesOf(box).reduce(
      (sum, half) => sum + areaWithin(half, region, near, halvings - 1),
      0n,
    );
  }
  return cutTile(box, region, near).reduce(
    (sum, { shape, bounds }) =>
      sum + doubleShapeArea(shape ?? { outline: ringOf(bounds), holes: [] }),
    0n,
  );
}

function halvesOf(box: Box): readonly [Box, Box] {
  const { left, bottom, right, top } = box;
  if (right - left > top - bottom) {
    const middle = Math.floor((left + right) / 2);
    return [
      { ...box, right: middle },
      { ...box, left: middle },
    ];
  }
  const middle = Math.floor((bottom + top) / 2);
  return [
    { ...box, top: middle },
    { ...box, bottom: middle },
  ];
}
