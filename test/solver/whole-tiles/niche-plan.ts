import assert from "node:assert/strict";
import {
  openingFits,
  type OpeningFits,
  type SolvedLay,
  type SolvedWall,
} from "../../../src/solver/index.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

/** A wall of 12 x 6 tile at 1/8 in stack bond, whole from its lower left corner at 0, 0. */
export function nichePlan(
  niche: string,
  lay = "across full tile from left\n up full course from bottom",
  bond = "stack",
): string {
  return `units inch
tile field "12 x 6" {
  face 12 x 6
  thickness 3/8
}
trim nose "bullnose" {
  face 6 x 1
  thickness 3/8
}
wall back "Back" {
  size 72 5/8 x 61 1/8
  bottom floor joint 0
  left wall joint 0
  right wall joint 0
  top ceiling joint 0
  ${niche}
  lay field {
    bond ${bond}
    joint 1/8
    ${lay}
  }
}
`;
}

export interface Fitted {
  readonly wall: SolvedWall;
  readonly laid: SolvedLay;
  readonly fits: OpeningFits | null;
}

/** The fits of the first opening. */
export function fitted(text: string): Fitted {
  const { wall, laid } = firstWall(solveClean(text));
  const [opening] = wall.wall.openings;
  assert.ok(opening);
  return { wall, laid, fits: openingFits(wall, laid, opening) };
}
