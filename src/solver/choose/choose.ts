import { NM_PER, type Nm } from "../../measure/index.js";
import type { Lay, Plan, UpStart, Wall } from "../../model/index.js";
import { regionOf } from "../region.js";
import type { Choice, Option } from "../solved.js";
import { acrossOrigin, asSettled, type SettledStart, upOrigin } from "../start.js";
import { MOST, MOST_NAMED } from "./budget.js";
import { compareScores, firstDifference } from "./compare.js";
import { type Field, fieldOf } from "./field.js";
import { namedAcross, namedUp, sayAcross, sayUp } from "./named-starts.js";
import { runsOf } from "./runs.js";
import { type RegionAt, search } from "./search.js";
import type { Found } from "./walk.js";
import type { Effort } from "./effort.js";
import { columnsOf, lowestCourse, weighQuickly } from "./weigh.js";

/** How a lay starts, and what the solver had to do with it. */
export interface Chosen {
  readonly joint: Nm;
  readonly across: SettledStart;
  readonly up: UpStart;
  /** null when the plan states everything. */
  readonly choice: Choice | null;
}

/** How many other options are told. */
const MOST_OTHERS = 4;

/** Lattices that lie nearer to each other than this look the same (1/32 in, as lengths are shown). */
const TRIVIAL: Nm = NM_PER.inch / 32;

/**
 * Chooses what a lay leaves open of its start across, its start up and its joint: the best of all
 * by the order of `Score`, and among equally good ones the one that is said most simply. What the
 * plan states is kept. `regionAt` says what of the wall the lay has; by default it has all of it.
 */
export function choose(
  plan: Plan,
  wall: Wall,
  lay: Lay,
  regionAt: RegionAt = (joint) => regionOf(plan, wall, joint),
): Chosen {
  const { across, up, joint } = asSettled(lay);
  if (across && up && joint.min === joint.max)
    return { joint: joint.min, across, up, choice: null };
  const { best, weighed, capped } = search(plan, wall, lay, regionAt);
  const chosen = optionOf(best);
  const others = othersThan(plan, best, regionAt);
  const left: Choice["left"] = [
    ...(across ? [] : (["across"] as const)),
    ...(up ? [] : (["up"] as const)),
    ...(joint.min < joint.max ? (["joint"] as const) : []),
  ];
  const decidedBy = others[0] ? firstDifference(chosen.score, others[0].score) : null;
  const choice: Choice = { by: "wall", left, chosen, others, weighed, decidedBy, capped };
  return { joint: chosen.joint, across: chosen.across, up: chosen.up, choice };
}

function optionOf({ field, x, y, score }: Found): Option {
  const { lay, joint } = field.ground;
  return {
    across: lay.across ?? sayAcross(field, x).start,
    up: lay.up ?? sayUp(field, y).start,
    joint,
    score,
  };
}

/** The best of the starts that have a name, at either end of the joint's range and as chosen. */
function othersThan(plan: Plan, best: Found, regionAt: RegionAt): Option[] {
  const { wall, lay, joint } = best.field.ground;
  const joints = [...new Set([joint, lay.joint.min, lay.joint.max])];
  const effort = { cells: 0 };
  const named = joints.flatMap((each) =>
    weighNamed(
      each === joint ? best.field : fieldOf(plan, wall, lay, each, regionAt(each)),
      effort,
    ),
  );
  named.sort((a, b) => compareScores(a.score, b.score) || a.rank - b.rank);
  const kept: Found[] = [best];
  for (const found of named) {
    if (kept.length > MOST_OTHERS) break;
    if (!kept.some((other) => isAlike(found, other))) kept.push(found);
  }
  return kept.slice(1).map(optionOf);
}

function weighNamed(field: Field, effort: Effort): Found[] {
  const { ground } = field;
  const { wall, lay } = ground;
  const across = lay.across ? [lay.across] : namedAcross(wall).slice(0, MOST_NAMED);
  const up = lay.up ? [lay.up] : namedUp(wall).slice(0, MOST_NAMED);
  return across.flatMap((acrossStart, i) => {
    const x = acrossOrigin(ground, acrossStart);
    const columns = columnsOf(field, x);
    return up.flatMap((upStart, j) => {
      if (effort.cells > MOST.cells / 2) return [];
      const y = lowestCourse(field, upOrigin(ground, upStart));
      const start = { x, columns, y, courses: runsOf(field.up, y) };
      const score = weighQuickly(field, start, effort, null)!;
      return { field, x, y, score, rank: i * up.length + j };
    });
  });
}

function isAlike(a: Found, b: Found): boolean {
  const { joint } = a.field.ground;
  return (
    Math.abs(joint - b.field.ground.joint) < TRIVIAL &&
    isNear(a.x, b.x, a.field.across.module) &&
    isNear(a.y, b.y, a.field.up.module)
  );
}

function isNear(a: Nm, b: Nm, module: Nm): boolean {
  const apart = Math.abs(a - b) % module;
  return Math.min(apart, module - apart) < TRIVIAL;
}
