import type { Side } from "../model/index.js";
import { encloses, overlaps, shared, type Box } from "./box.js";
import { circleRing } from "./clip/circle.js";
import { cutTile, type Obstacles, type TilePart } from "./cut-tile.js";
import { doubleArea, doubleShapeArea, ringOf } from "./shape.js";
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
  return areaLessApart(box, region, near) ?? areaOf(cutTile(box, region, near));
}

function areaOf(parts: readonly TilePart[]): bigint {
  return parts.reduce(
    (sum, { shape, bounds }) =>
      sum + doubleShapeArea(shape ?? { outline: ringOf(bounds), holes: [] }),
    0n,
  );
}

/**
 * By subtraction, where all that is taken from a box is apart from each other, no slope cuts it, and
 * circles lie within the box; else null.
 */
function areaLessApart(box: Box, region: Bounded, { boxes, circles }: Obstacles): bigint | null {
  const taken = [...boxes, ...circles];
  if (taken.length === 0) return null;
  if (taken.some((each, i) => taken.slice(i + 1).some((other) => overlaps(each, other))))
    return null;
  let area = areaOf(cutTile(box, region, NOTHING));
  for (const each of boxes) {
    const parts = cutTile(shared(each, box), region, NOTHING);
    if (parts.some(({ shape }) => shape !== null)) return null;
    area -= areaOf(parts);
  }
  for (const each of circles) {
    const [whole] = cutTile(each, region, NOTHING);
    if (whole?.shape !== null) return null;
    if (!encloses(whole.bounds, each) || !encloses(box, each)) return null;
    area -= doubleArea(circleRing(each));
  }
  return area;
}

const NOTHING: Obstacles = { boxes: [], circles: [] };

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
