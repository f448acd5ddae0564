import type { Grout } from "../../model/index.js";
import type { SolvedLay, SolvedWall } from "../../solver/index.js";
import type { GroutTakeoff } from "../takeoff.js";
import type { SetAreas } from "./set-areas.js";
import { volumeOf } from "./volume.js";

/** mm³ times grams in a litre are billionths of a kilogram. */
const IN_KILOGRAM = 1_000_000_000;

/**
 * The joints of a wall, filled as deep as the tile is thick (between trims: as the trim is). By the exact
 * void, which is smaller than the trade's formula (L + W)/(L W) x J x depth: the formula counts each
 * crossing of two joints twice (tilersforums.com/threads/39223).
 */
export function groutOf(
  { wall }: SolvedWall,
  { lay }: SolvedLay,
  areas: SetAreas,
  grout: Grout | null,
): GroutTakeoff {
  const volume = volumeOf([
    { doubleArea: areas.tileJoints, thickness: lay.tile.thickness },
    ...areas.trimJoints,
  ]);
  const density = grout?.density ?? null;
  return {
    wall: wall.name,
    tile: lay.tile.name,
    volume,
    mass: density === null ? null : (volume * density) / IN_KILOGRAM,
  };
}
