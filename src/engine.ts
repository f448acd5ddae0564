import { buildScene, type Scene } from "./drawing/index.js";
import { type LetValue, parse, resolve, type Source, type SyntaxTree } from "./language/index.js";
import type { Diagnostic, Plan } from "./model/index.js";
import { check } from "./rules/index.js";
import { solve, type SolvedPlan } from "./solver/index.js";

/** All that a text comes to. */
export interface Outcome {
  readonly plan: Plan;
  /** What each named length comes to; null where it can't be worked out. */
  readonly lets: ReadonlyMap<string, LetValue | null>;
  readonly solved: SolvedPlan;
  /** What the language, then what the rules have to say. */
  readonly diagnostics: readonly Diagnostic[];
  /** The picture's plain data, built when it is first asked for. */
  readonly scene: () => Scene;
}

/**
 * From a plan's text to its solved, checked plan. Never throws, whatever the text. `before` is what the text, or another
 * one like it, came to earlier: walls that come to the same share it.
 */
export function run(text: string, source: Source, before?: SolvedPlan): Outcome {
  return runTree(parse(text), source, before);
}

/** From a text that was read already. */
export function runTree(tree: SyntaxTree, source: Source, before?: SolvedPlan): Outcome {
  const { plan: asked, lets, diagnostics: told } = resolve(tree, source);
  const solved = solve(asked, before);
  const { plan } = solved;
  const diagnostics = [...told, ...check(solved)];
  let scene: Scene | undefined;
  return {
    plan,
    lets,
    solved,
    diagnostics,
    scene: () => (scene ??= buildScene(solved, diagnostics)),
  };
}
