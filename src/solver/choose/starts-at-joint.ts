import type { Nm } from "../../measure/index.js";
import { acrossOrigin, upOrigin } from "../start.js";
import { type AcrossBound, type Bound, boundAcross, boundUp, MOST_BOXES } from "./bounds.js";
import { MOST, MOST_NAMED, thinned } from "./budget.js";
import { type Field } from "./field.js";
import { namedAcross, namedUp } from "./named-starts.js";
import { criticalAcross, criticalUp } from "./origins.js";
import { compareBounds, sumOf } from "./pairs-in-order.js";
import type { Run } from "./runs.js";
import type { Scribed } from "./scribed.js";
import { type Columns, lowestCourse } from "./weigh.js";

/** One start across or up, what it costs at least, and its tiles once they are asked for. */
interface Half<Cost extends Bound, Tiles> {
  readonly at: Nm;
  readonly bound: Cost;
  tiles: Tiles | null;
  /** What pieces along measured sides cost, once it is asked for. */
  scribed: Scribed | null;
}

export type Across = Half<AcrossBound, Columns>;
export type Up = Half<Bound, readonly Run[]>;

/** The starts at one joint that straight edges make critical, and those that have a name; best bound first. */
export interface StartsAtJoint {
  readonly field: Field;
  /** Whether there are more critical starts than are weighed. */
  readonly isThinned: boolean;
  readonly across: readonly Across[];
  readonly up: readonly Up[];
}

export function startsAtJoint(field: Field): StartsAtJoint {
  const { lay } = field.ground;
  const { ground } = field;
  const allAcross = lay.across ? [] : criticalAcross(field);
  const allUp = lay.up ? [] : criticalUp(field);
  const namedX = lay.across ? [lay.across] : namedAcross(ground.wall).slice(0, MOST_NAMED);
  const namedY = lay.up ? [lay.up] : namedUp(ground.wall).slice(0, MOST_NAMED);
  const across = thinned(allAcross, MOST.starts).concat(namedX.map((s) => acrossOrigin(ground, s)));
  const up = thinned(allUp, MOST.starts).concat(namedY.map((s) => upOrigin(ground, s)));
  const isThinned = Math.max(allAcross.length, allUp.length) > MOST.starts;
  return {
    field,
    isThinned,
    across: across.map((x) => acrossHalf(field, x)).sort(byBound),
    up: up.map((y) => upHalf(field, y)).sort(byBound),
  };
}

export function acrossHalf(field: Field, x: Nm): Across {
  return { at: x, bound: boundAcross(field, x), tiles: null, scribed: null };
}

export function upHalf(field: Field, y: Nm): Up {
  const at = lowestCourse(field, y);
  return { at, bound: boundUp(field, at), tiles: null, scribed: null };
}

/**
 * What any pair of starts at a joint costs at least. The bounds know nothing of slopes, so the best
 * of the critical starts bounds those that only a slope makes critical, too.
 */
export function lowest({ across, up }: StartsAtJoint): Bound {
  return sumOf(across[0]!.bound, up[0]!.bound);
}

/** About how many looks at obstacles it takes to bound all starts at a joint. */
export function looksAt({ field, across, up }: StartsAtJoint): number {
  const obstacles = field.obstacles.length;
  const each = 4 + Math.min(obstacles, MOST_BOXES) * obstacles;
  return (across.length * field.shifts.length + up.length) * each;
}

function byBound(a: Half<Bound, unknown>, b: Half<Bound, unknown>): number {
  return compareBounds(a.bound, b.bound) || a.at - b.at;
}
