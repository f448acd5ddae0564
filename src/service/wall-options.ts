import { optionsOf, type SolvedPlan, type SolvedWall, type WallOptions } from "../solver/index.js";

/** An editor asks at each step of the cursor; a version of a plan is weighed once. */
const weighed = new WeakMap<SolvedWall, WallOptions | null>();

/** The best few starts of a wall; null where no tile is laid on it. */
export function wallOptions({ plan }: SolvedPlan, wall: SolvedWall): WallOptions | null {
  const known = weighed.get(wall);
  if (known !== undefined) return known;
  const options = optionsOf(plan, wall);
  weighed.set(wall, options);
  return options;
}
