import { type Nm, NM_PER } from "../../measure/index.js";
import type { Plan, Wall } from "../../model/index.js";
import type { SolvedWall } from "../../solver/index.js";
import type { SealantTakeoff } from "../takeoff.js";
import { softJointsOf } from "./soft-joints.js";
import { ceilDivide } from "./volume.js";

/** A bead is half as deep as it is wide, and 1/8 in at least (fcimag.com/articles/84636). */
const LEAST_DEPTH: Nm = NM_PER.inch / 8;

const NM3_IN_MM3 = 1_000_000_000_000_000_000n;

/** The sealant of a laid wall, joint by joint. */
export function sealantOf(
  solved: SolvedWall,
  walls: readonly Wall[],
  { sealant, units }: Pick<Plan, "sealant" | "units">,
): SealantTakeoff[] {
  return softJointsOf(solved, walls, units).map(({ along, length, width }) => {
    const depth = sealant?.depth ?? Math.max(LEAST_DEPTH, Math.ceil(width / 2));
    const filled = BigInt(length) * BigInt(width) * BigInt(depth);
    const volume = Number(ceilDivide(filled, NM3_IN_MM3));
    return { wall: solved.wall.name, along, length, width, depth, volume };
  });
}
