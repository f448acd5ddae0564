import { check } from "../../src/rules/index.js";
import type { Diagnostic } from "../../src/model/index.js";
import { solveClean } from "../support/solve-text.js";

/** The lines of a plan of one wall that differ from a plain one: 6 x 3 in tile, joints of 1/8 in. */
export interface WallText {
  readonly units?: string;
  /** Lines at the top of the plan. */
  readonly plan?: string;
  readonly face?: string;
  /** Further lines of the tile. */
  readonly tile?: string;
  readonly size?: string;
  /** The four edges; free ones when left out, so that the tile fills the wall. */
  readonly edges?: string;
  /** Openings, holes, allows. */
  readonly wall?: string;
  readonly bond?: string;
  readonly joint?: string;
  readonly start?: string;
  /** Further lines of the lay. */
  readonly lay?: string;
}

export const FREE = "left free\nright free\nbottom free\ntop free";
export const WALLS = "left wall movement 1/8\nright wall movement 1/8\nbottom free\ntop free";
export const FROM_CORNER = "across full tile from left\nup full course from bottom";

/** The plan's text; `nm` is one nanometre. Course 1 begins in the lower left corner. */
export function wallText(parts: WallText = {}): string {
  return `plan "Test"
units ${parts.units ?? "inch"}
bed 1/8
let nm = 0.000001mm
${parts.plan ?? ""}
tile field "field tile" {
  face ${parts.face ?? "6 x 3"}
  thickness 5/16
${parts.tile ?? ""}
}
trim nose "bullnose" {
  face 6 x 2
  thickness 5/16
}
wall back "Back wall" {
  size ${parts.size ?? "24 3/8 x 12 3/8"}
${parts.edges ?? FREE}
${parts.wall ?? ""}
  lay field {
    bond ${parts.bond ?? "stack"}
    joint ${parts.joint ?? "1/8"}
${parts.start ?? FROM_CORNER}
${parts.lay ?? ""}
  }
}
`;
}

/** What a rule finds in a plan. */
export function findings(parts: WallText | string, code: string): Diagnostic[] {
  const text = typeof parts === "string" ? parts : wallText(parts);
  return check(solveClean(text).solved).filter((diagnostic) => diagnostic.code === code);
}

/** The messages of what a rule finds, each with its severity before it where that is asked for. */
export function messages(parts: WallText | string, code: string): string[] {
  return findings(parts, code).map(({ message }) => message);
}
