import { type Nm, NM_PER } from "../measure/index.js";
import type { SolvedPlan } from "../solver/index.js";
import type { PieceCut, SawWork, WallCuts } from "./takeoff.js";

/** What a saw takes where the plan names none: 3/32 in (common practice). */
export const USUAL_KERF: Nm = (3 * NM_PER.inch) / 32;

/** A square bite has four sides, less those that are open. */
const SIDES_OF_A_NOTCH = 4;

/** The saw's work on all walls, each piece on its own; and the kerf that is reckoned with. */
export function sawWork({ plan, walls }: SolvedPlan, cuts: readonly WallCuts[]): SawWork {
  const batches = cuts.flatMap((wall) => wall.batches);
  const stated = plan.saw?.kerf ?? null;
  const trims = walls.flatMap((wall) => wall.trims).flatMap((run) => run.pieces);
  return {
    passes: batches.reduce((sum, { cut, labels }) => sum + passesOf(cut) * labels.length, 0),
    holes: batches.reduce((sum, { cut, labels }) => sum + cut.holes.length * labels.length, 0),
    mitres: trims.reduce((sum, { mitre }) => sum + mitre.length, 0),
    kerf: stated ?? USUAL_KERF,
    kerfStated: stated !== null,
  };
}

/** Straight passes for one piece: through-cuts, slopes, and the sides of its notches. */
function passesOf({ fences, tapers, notches }: PieceCut): number {
  return notches.reduce(
    (sum, notch) => sum + SIDES_OF_A_NOTCH - notch.opens.length,
    fences.length + tapers.length,
  );
}
