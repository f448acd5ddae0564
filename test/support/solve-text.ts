import assert from "node:assert/strict";
import { parse, resolve, type Source } from "../../src/language/index.js";
import type { Diagnostic, Plan } from "../../src/model/index.js";
import { solve, type SolvedLay, type SolvedPlan, type SolvedWall } from "../../src/solver/index.js";
import { validate } from "./validate.js";

/** A plan that stands alone in memory and uses no other file. */
export const ALONE: Source = { file: "test.tileplan", root: "", read: () => null };

export interface SolvedText {
  readonly plan: Plan;
  readonly solved: SolvedPlan;
  /** What the language has to say; the rules are not asked. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads and solves a plan, and checks all laws on it. */
export function solveText(text: string): SolvedText {
  const { plan, diagnostics } = resolve(parse(text), ALONE);
  const solved = solve(plan);
  validate(solved);
  return { plan, solved, diagnostics };
}

/** The same, of a plan that must have no error in it. */
export function solveClean(text: string): SolvedText {
  const answer = solveText(text);
  const errors = answer.diagnostics.filter(({ severity }) => severity === "error");
  assert.deepEqual(errors, [], text);
  return answer;
}

/** The first wall of a solved plan, and its lay. */
export function firstWall({ solved }: SolvedText): { wall: SolvedWall; laid: SolvedLay } {
  const wall = solved.walls[0];
  const laid = wall?.lays[0];
  assert.ok(wall && laid, "the plan has a laid wall");
  return { wall, laid };
}
