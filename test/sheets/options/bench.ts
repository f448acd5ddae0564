import assert from "node:assert/strict";
import {
  type LaidOption,
  optionsOf,
  type SolvedPlan,
  type SolvedWall,
} from "../../../src/solver/index.js";
import { solveClean } from "../../support/solve-text.js";

/** A wall of 6 x 3 tile, 33 x 24 in between its soft joints, with its start written down. */
export const STATED = `plan "Options bench"
units inch
tile field "6 x 3" {
  face 6 x 3
  thickness 3/8
}
wall back "Back wall" {
  size 33 1/4 x 24 1/4
  bottom floor movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  niche shelf {
    at 13, 13
    size 6 x 6
    movement 1/16
  }
  hole tap at 9, 5 across 1
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
`;

/** The same, its start left to the solver. */
export const OPEN = STATED.replace(/ {4}across.*\n {4}up.*\n/, "");

/** The same in a running bond. */
export const RUNNING = STATED.replace("bond stack", "bond running 1/2");

export interface Bench {
  readonly solved: SolvedPlan;
  readonly wall: SolvedWall;
  readonly options: readonly LaidOption[];
}

export function bench(text: string): Bench {
  const { solved, plan } = solveClean(text);
  const [wall] = solved.walls;
  const found = wall && optionsOf(plan, wall);
  assert.ok(wall && found);
  return { solved, wall, options: found.options };
}

/**
 * A wainscot of four courses of 8 x 8 tile, 32 x 40 of wall without soft joints, and 4 x 2 tile over it.
 * The wainscot's tile ends at 8, 16 1/8, 24 1/4 and 32 3/8 up; the field begins a joint over it, at 32 1/2.
 */
export const TWO_LAYS = `units inch
tile dado "8 x 8" {
  face 8 x 8
  thickness 3/8
}
tile field "4 x 2" {
  face 4 x 2
  thickness 3/8
}
wall back "Back wall" {
  size 32 1/2 x 64
  left free
  right free
  bottom free
  top free
  niche low {
    at 8 1/8, 8 1/8
    size 8 x 8
  }
  niche shelf {
    at 12 3/8, 40 3/4
    size 8 1/8 x 4 1/8
  }
  hole tap at 9, 40 across 1
  lay dado {
    bond stack
    joint 1/8
    courses 4
    across full tile from left
    up full course from bottom
  }
  lay field {
    over dado
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
`;
