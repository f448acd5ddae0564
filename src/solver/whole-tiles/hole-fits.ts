import { divideRounded, type Nm } from "../../measure/index.js";
import type { Hole } from "../../model/index.js";
import { type Box, overlaps } from "../box.js";
import { rangeBetween } from "../chain.js";
import { courseBottom, courseShift, moduleAcross, moduleUp } from "../lattice.js";
import type { Region, SolvedLay } from "../solved.js";

/** From the left substrate and the level line. */
export interface Place {
  readonly x: Nm;
  readonly y: Nm;
}

/** The nearest places for a hole's centre; null where no whole tiles are near. */
export interface HoleFits {
  /** The middle of a whole tile. */
  readonly tile: Place | null;
  /** The middle of a joint between two whole tiles: beside each other, or one over the other. */
  readonly joint: Place | null;
}

/** No tile further off than this is looked at, each way. */
const TILES_ROUND = 3;

/**
 * Works back from the tile to a hole (a valve, an arm): where its centre would be in the middle of a
 * tile or of a joint, as setters like it (common practice).
 */
export function holeFits({ lattice, region }: SolvedLay, hole: Hole): HoleFits {
  const { face, joint } = lattice;
  const { x, y } = hole.at;
  const tiles: Place[] = [];
  const joints: Place[] = [];
  const row = 1 + Math.floor((y - lattice.y) / moduleUp(lattice));
  for (let course = row - TILES_ROUND; course <= row + TILES_ROUND; course++) {
    const first = lattice.x + courseShift(lattice, course);
    const column = Math.floor((x - first) / moduleAcross(lattice));
    for (let k = column - TILES_ROUND; k <= column + TILES_ROUND; k++) {
      const left = first + k * moduleAcross(lattice);
      const bottom = courseBottom(lattice, course);
      const tile = { left, bottom, right: left + face.across, top: bottom + face.up };
      const middle = {
        x: divideRounded(tile.left + tile.right, 2),
        y: divideRounded(tile.bottom + tile.top, 2),
      };
      const beside = { ...tile, right: tile.right + moduleAcross(lattice) };
      const over = { ...tile, top: tile.top + moduleUp(lattice) };
      if (isWhole(region, hole, tile)) tiles.push(middle);
      if (isWhole(region, hole, beside)) {
        joints.push({ x: tile.right + divideRounded(joint, 2), y: middle.y });
      }
      if (isWhole(region, hole, over)) {
        joints.push({ x: middle.x, y: tile.top + divideRounded(joint, 2) });
      }
    }
  }
  return { tile: nearest(tiles, hole.at), joint: nearest(joints, hole.at) };
}

/** Whether nothing but the hole itself cuts into the box. */
function isWhole(region: Region, hole: Hole, box: Box): boolean {
  const { left, right, bottom, top } = box;
  return (
    rangeBetween(region.left, bottom, top).high <= left &&
    rangeBetween(region.right, bottom, top).low >= right &&
    rangeBetween(region.bottom, left, right).high <= bottom &&
    rangeBetween(region.top, left, right).low >= top &&
    !region.steps.some((step) => overlaps(step, box)) &&
    !region.takeaways.some((taken) => overlaps(taken.box, box)) &&
    !region.roundHoles.some((round) => round.hole !== hole && overlaps(round.box, box))
  );
}

/** The first among equally near ones. */
function nearest(places: readonly Place[], to: Place): Place | null {
  const off = ({ x, y }: Place): number => Math.hypot(x - to.x, y - to.y);
  return places.reduce<Place | null>(
    (best, place) => (best === null || off(place) < off(best) ? place : best),
    null,
  );
}
