import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { SolvedLay, SolvedPlan, SolvedWall } from "../../../src/solver/index.js";
import { solveClean } from "../../support/solve-text.js";

/** Inches, a 4 x 4 tile with joints of 1/8, and the walls. */
export function planOf(...walls: string[]): string {
  return [
    'plan "Setting-out bench"',
    "units inch",
    "bed 1/8",
    'tile field "4 x 4 tile" {\n  face 4 x 4\n  thickness 3/8\n}',
    'trim nose "bullnose" {\n  face 4 x 1\n  thickness 3/8\n}',
    ...walls,
    "",
  ].join("\n");
}

/** What a wall has in it; what is left out is as in the first of these. */
export interface WallText {
  readonly name?: string;
  readonly size?: string;
  readonly bottom?: string;
  readonly left?: string;
  readonly right?: string;
  readonly top?: string;
  readonly inside?: string;
  readonly bond?: string;
  readonly across?: string;
  readonly up?: string;
  readonly set?: string;
}

/** A wall of 40 x 24: a whole tile at the left and at the bottom, all sides with joints of 1/8. */
export function wallText(text: WallText = {}): string {
  return [
    `wall ${text.name ?? "back"} "${text.name ?? "back"} wall" {`,
    `  size ${text.size ?? "40 x 24"}`,
    `  bottom ${text.bottom ?? "floor"} movement 1/8`,
    `  left ${text.left ?? "wall"} movement 1/8`,
    `  right ${text.right ?? "wall"} movement 1/8`,
    `  top ${text.top ?? "ceiling"} movement 1/8`,
    text.inside ?? "",
    "  lay field {",
    `    bond ${text.bond ?? "stack"}`,
    "    joint 1/8",
    `    across ${text.across ?? "full tile from left"}`,
    `    up ${text.up ?? "full course from bottom"}`,
    text.set === undefined ? "" : `    set ${text.set}`,
    "  }",
    "}",
  ].join("\n");
}

export interface Laid {
  readonly plan: SolvedPlan;
  readonly wall: SolvedWall;
  readonly lay: SolvedLay;
}

/** The first wall of a plan, laid. */
export function laid(...walls: string[]): Laid {
  const { solved } = solveClean(planOf(...walls));
  const [wall] = solved.walls;
  const lay = wall?.lays[0];
  assert.ok(wall && lay, "the first wall is laid");
  return { plan: solved, wall, lay };
}

/** Inches as nanometres; the figure must be a whole number of them. */
export function inches(count: number): number {
  const nm = count * NM_PER.inch;
  assert.ok(Number.isInteger(nm), `${count} in is whole nanometres`);
  return nm;
}
