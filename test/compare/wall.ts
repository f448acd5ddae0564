import { run } from "../../src/engine.js";
import { compare, type ComparedPlan, type Comparison } from "../../src/compare/index.js";
import { ALONE } from "../support/solve-text.js";

/** A plan as solved and checked. */
export function told(text: string): ComparedPlan {
  const { solved, diagnostics } = run(text, ALONE);
  return { solved, diagnostics };
}

export function comparisonOf(before: string, after: string): Comparison {
  return compare(told(before), told(after));
}

/** The text with one thing changed; fails where it isn't in it. */
export function edited(text: string, ...edits: readonly (readonly [string, string])[]): string {
  return edits.reduce((now, [old, fresh]) => {
    if (!now.includes(old)) throw new Error(`the plan does not say ${JSON.stringify(old)}`);
    return now.replace(old, fresh);
  }, text);
}

/**
 * A wall with round numbers: 4 in tile and 1/8 in joints. Across 1/8 + 10 x 4 1/8 = 41 3/8 in the
 * clear, so ten whole tiles from the left; up five whole courses and one of 2 in.
 */
export const WALL = `plan "Test bench"
units inch
bed 1/8
tile field "4 x 4 tile" {
  face 4 x 4
  thickness 1/4
  variation 1/64
  box 25
}
trim nose "bullnose" {
  face 6 x 2
  thickness 1/4
}
wall back "Back wall" {
  size 41 3/8 x 22 7/8
  bottom counter movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top ceiling movement 1/8
  niche shelf {
    at 16 5/8, 8 3/8
    size 8 1/8 x 4
    movement 1/8
  }
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up full course from bottom
  }
}
`;
