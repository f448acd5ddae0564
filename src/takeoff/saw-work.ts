import { type Nm, NM_PER } from "../measure/index.js";
import type { Plan } from "../model/index.js";
import type { SolvedPlan } from "../solver/index.js";
import type { PieceCut, SawWork, WallCuts } from "./takeoff.js";

/** What a saw takes where the plan names none: 3/32 in (common practice). */
export const USUAL_KERF: Nm = (3 * NM_PER.inch) / 32;

/** What a cut takes away: what the plan says, else the usual. */
export function kerfOf({ saw }: Plan): Nm {
  return saw?.kerf ?? USUAL_KERF;
}

/** A square bite has four sides, less those that are open. */
const SIDES_OF_A_NOTCH = 4;

/** The saw's work that is still to be done on all walls, each piece on its own; and the kerf that is reckoned with. */
export function sawWork({ plan, walls }: SolvedPlan, cuts: readonly WallCuts[]): SawWork {
  const batches = cuts.flatMap((wall) => wall.batches);
  const mitred = cuts
    .flatMap((wall) => wall.pieces)
    .filter(({ set }) => !set)
    .flatMap(({ cut }) => cut.mitres);
  const trims = walls.flatMap((wall) => wall.trims).flatMap((run) => run.pieces);
  return {
    passes: batches.reduce((sum, { cut, labels }) => sum + passesOf(cut) * labels.length, 0),
    holes: batches.reduce((sum, { cut, labels }) => sum + cut.holes.length * labels.length, 0),
    mitres: trims.reduce((sum, { mitre }) => sum + mitre.length, 0),
    mitredEdges: mitred.length,
    mitreLength: mitred.reduce((sum, { length }) => sum + length, 0),
    kerf: kerfOf(plan),
    kerfStated: (plan.saw?.kerf ?? null) !== null,
  };
}

/** Straight passes for one piece: through-cuts, slopes, mitres, and the sides of its notches. */
function passesOf({ fences, tapers, notches, mitres }: PieceCut): number {
  return notches.reduce(
    (sum, notch) => sum + SIDES_OF_A_NOTCH - notch.opens.length,
    fences.length + tapers.length + mitres.length,
  );
}
