import { firstWall, solveClean } from "../support/solve-text.js";
import type { SolvedPlan, SolvedWall } from "../../src/solver/index.js";

/** The lines of a plan of two walls with a band that differ from a plain one. */
export interface BandText {
  /** Lines at the top of the plan. */
  readonly plan?: string;
  /** Lines of the back wall, and of the side wall, whose tile covers the other's. */
  readonly back?: string;
  readonly side?: string;
  /** What the walls' lays have instead of one list of courses. */
  readonly backLays?: string;
  readonly sideLays?: string;
}

/** Eight courses of 3 in with joints of 1/8 in, then a liner of 1 in: from 25 to 26 in up; `nm` is one nanometre. */
export const LAYS = `lay field {
    bond stack
    joint 1/8
    across full tile from left
    courses 8 of field, 1 of liner, rest of field
  }`;

export function bandText(parts: BandText = {}): string {
  return `plan "Test"
units inch
bed 1/8
let nm = 0.000001mm
${parts.plan ?? ""}
tile field {
  face 6 x 3
  thickness 5/16
}
tile liner {
  face 12 x 1
  thickness 5/16
}
tile pencil {
  face 12 x 1/2
  thickness 5/16
}
wall back {
  size 60 x 48
  bottom free
  top free
  left free
  right corner side under movement 1/8
${parts.back ?? ""}
  ${parts.backLays ?? LAYS}
}
wall side {
  size 36 x 48
  bottom free
  top free
  right free
  left corner back over movement 1/8
${parts.side ?? ""}
  ${parts.sideLays ?? parts.backLays ?? LAYS}
}
`;
}

export function bandWall(parts: BandText = {}): { wall: SolvedWall; solved: SolvedPlan } {
  const { solved, ...rest } = solveClean(bandText(parts));
  return { wall: firstWall({ solved, ...rest }).wall, solved };
}
