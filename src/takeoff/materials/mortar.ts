import { ceilDivide, volumeOf } from "./volume.js";
import type { Nm } from "../../measure/index.js";
import type { Plan } from "../../model/index.js";
import type { MortarTakeoff } from "../takeoff.js";
import type { SetAreas } from "./set-areas.js";

/** Twice this many square nanometres are one mm². */
const DOUBLED_IN_MM2 = 2_000_000_000_000n;

/** The mortar of a wall: spread under tile, trim and their joints, and on the tiles' backs where the plan says so. `doubleSet`: the tile that is set, twice its area. */
export function mortarOf(
  plan: Pick<Plan, "bed" | "mortar">,
  wall: string,
  areas: SetAreas,
  doubleSet = 0n,
): MortarTakeoff {
  const { tiles, trims, tileJoints, trimJoints } = areas;
  const doubleArea = trimJoints.reduce(
    (sum, layer) => sum + layer.doubleArea,
    tiles + trims + tileJoints,
  );
  const volumeWithout = (set: bigint): number =>
    volumeOf([
      { doubleArea: doubleArea - set, thickness: bedOf(plan) },
      { doubleArea: tiles + trims - set, thickness: plan.mortar?.backButter ?? 0 },
    ]);
  const toCome = { doubleArea: doubleArea - doubleSet, volume: volumeWithout(doubleSet) };
  return {
    wall,
    doubleArea,
    volume: volumeWithout(0n),
    toCome: doubleSet > 0n ? toCome : null,
    bags: mortarBags(plan, doubleArea),
  };
}

/**
 * The bed as embedded: the plan's, else half the depth of the trowel's square notches, which is what they
 * leave where ridges are as wide as the gaps between them (common practice); 0 where the plan says neither.
 */
function bedOf({ bed, mortar }: Pick<Plan, "bed" | "mortar">): Nm {
  if (bed > 0 || !mortar?.notch) return bed;
  return Math.ceil(mortar.notch.depth / 2);
}

/**
 * Bags for an area, by the figure that the maker gives for a bag; back-buttering takes as much more as it is
 * thick against the bed. null where the plan doesn't say what a bag covers. `exact` is rounded, `bought` isn't.
 */
export function mortarBags(
  plan: Pick<Plan, "bed" | "mortar">,
  doubleArea: bigint,
): MortarTakeoff["bags"] {
  const { mortar } = plan;
  if (!mortar?.bag) return null;
  const bed = bedOf(plan);
  const [spread, per] = bed > 0 ? [bed + (mortar.backButter ?? 0), bed] : [1, 1];
  const needed = doubleArea * BigInt(spread);
  const inBag = BigInt(mortar.bag.covers) * DOUBLED_IN_MM2 * BigInt(per);
  return {
    exact: Number(needed) / Number(inBag),
    bought: Number(ceilDivide(needed, inBag)),
  };
}
