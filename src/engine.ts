import { buildScene, type Scene } from "./drawing/index.js";
import { parse, resolve, type Source } from "./language/index.js";
import type { Diagnostic, Plan } from "./model/index.js";
import { check } from "./rules/index.js";
import { solve, type SolvedPlan } from "./solver/index.js";

/** All that a text comes to. */
export interface Outcome {
  readonly plan: Plan;
  readonly solved: SolvedPlan;
  /** What the language, then what the rules have to say. */
  readonly diagnostics: readonly Diagnostic[];
  /** The picture's plain data, built when it is first asked for. */
  readonly scene: () => Scene;
}

/** From a plan's text to its solved, checked plan. Never throws, whatever the text. */
export function run(text: string, source: Source): Outcome {
  const { plan, diagnostics: told } = resolve(parse(text), source);
  const solved = solve(plan);
  const diagnostics = [...told, ...check(solved)];
  let scene: Scene | undefined;
  return { plan, solved, diagnostics, scene: () => (scene ??= buildScene(solved, diagnostics)) };
}
