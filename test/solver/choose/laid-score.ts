import type { Nm } from "../../../src/measure/index.js";
import { scoreOf } from "../../../src/solver/choose/index.js";
import type { Score } from "../../../src/solver/index.js";
import { latticeOf } from "../../../src/solver/lattice.js";
import { layPieces } from "../../../src/solver/pieces.js";
import { regionOf } from "../../../src/solver/region.js";
import type { OneWall } from "./model-plan.js";

/** The score of a start, counted over the laid pieces. */
export function laidScore({ plan, wall, lay }: OneWall, joint: Nm, x: Nm, y: Nm): Score {
  const region = regionOf(plan, wall, joint);
  const { lattice, pieces } = layPieces(region, latticeOf(lay, joint, x, y));
  return scoreOf(wall, { region, lay, lattice, pieces }, plan.limits);
}
