import {
  optionsOf,
  type SolvedLay,
  type SolvedPlan,
  type SolvedWall,
  startedLays,
  type WallOptions,
} from "../solver/index.js";

/** An editor asks at each step of the cursor; a version of a plan is weighed once. */
const weighed = new WeakMap<SolvedLay, WallOptions | null>();

/** The best few starts of a lay of a wall, by default the first that may start otherwise; null where there is none. */
export function wallOptions(
  { plan }: SolvedPlan,
  wall: SolvedWall,
  laid: SolvedLay | undefined = startedLays(wall)[0],
): WallOptions | null {
  if (!laid) return null;
  const known = weighed.get(laid);
  if (known !== undefined) return known;
  const options = optionsOf(plan, wall, laid);
  weighed.set(laid, options);
  return options;
}
