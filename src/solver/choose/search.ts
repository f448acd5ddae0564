import type { Nm } from "../../measure/index.js";
import type { Lay, Plan, Wall } from "../../model/index.js";
import type { Region } from "../solved.js";
import { MOST, thinned } from "./budget.js";
import { criticalJoints } from "./critical-joints.js";
import { fieldOf } from "./field.js";
import { compareBounds } from "./pairs-in-order.js";
import { hasSlopes } from "./sloped-origins.js";
import { looksAt, lowest, startsAtJoint } from "./starts-at-joint.js";
import { type Found, Walk } from "./walk.js";

/** What of a wall a lay has at a width of joint. */
export type RegionAt = (joint: Nm) => Region;

/** What a search came to. */
export interface Search {
  readonly best: Found;
  /** How many pairs of starts, at every joint, were weighed or shown to be no better. */
  readonly weighed: number;
  /** Whether it was stopped; the best so far stands then. */
  readonly capped: boolean;
}

/** Finds the best of all starts and joints that a lay leaves open. */
export function search(plan: Plan, wall: Wall, lay: Lay, regionAt: RegionAt): Search {
  const fieldAt = (joint: Nm) => fieldOf(plan, wall, lay, joint, regionAt(joint));
  const [least, most] = [fieldAt(lay.joint.min), fieldAt(lay.joint.max)];
  const { joints, isAll } = criticalJoints(least, most);
  const first = startsAtJoint(least);
  const kept = thinned(joints, Math.min(MOST.joints, Math.floor(MOST.looks / looksAt(first)) + 2));
  const ends = least.ground.joint === most.ground.joint ? [least] : [least, most];
  const isPlain = !hasSlopes(least) && least.circles.length === 0;
  const { atOneJoint, atMany } = MOST.walking;
  const walk = new Walk(isPlain ? MOST.cells : ends.length === 1 ? atOneJoint : atMany);
  for (const field of ends) walk.weighNamed(field);
  // What a joint's starts come to is not kept while others are looked at: there may be thousands.
  const bounds = kept.map((joint) => ({ joint, bound: lowest(startsAtJoint(fieldAt(joint))) }));
  bounds.sort((a, b) => compareBounds(a.bound, b.bound) || a.joint - b.joint);
  for (const { joint, bound } of bounds) {
    if (walk.isBeaten(bound) || walk.isStopped) break;
    walk.searchJoint(startsAtJoint(fieldAt(joint)));
  }
  let isWhole = isAll && kept.length === joints.length && !first.isThinned;
  if (isWhole && !isPlain) {
    const bestJoint = walk.best.field.ground.joint;
    for (const joint of new Set([bestJoint, ...ends.map(({ ground }) => ground.joint)])) {
      isWhole = walk.searchAll(fieldAt(joint)) && isWhole;
    }
    // Between these joints there may be a better one: only straight edges make joints critical.
    isWhole &&= ends.length === 1;
  } else isWhole &&= !walk.isStopped;
  return { best: walk.best, weighed: walk.weighed, capped: !isWhole };
}
