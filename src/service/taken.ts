import type { SolvedPlan } from "../solver/index.js";
import { type Takeoff, takeoff } from "../takeoff/index.js";

const KEPT = new WeakMap<SolvedPlan, Takeoff>();

/** What a solved plan takes; worked out once, however often it is asked for. */
export function takenOf(solved: SolvedPlan): Takeoff {
  const known = KEPT.get(solved);
  if (known) return known;
  const taken = takeoff(solved);
  KEPT.set(solved, taken);
  return taken;
}
