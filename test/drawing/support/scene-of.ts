import { run } from "../../../src/engine.js";
import { drawHeadless } from "../../../src/drawing/headless.js";
import type { Scene, WallScene } from "../../../src/drawing/index.js";
import { solve, type SolvedPlan, type SolvedWall } from "../../../src/solver/index.js";
import { parse, resolve } from "../../../src/language/index.js";
import { settingOf, type Setting } from "../../../src/drawing/scene/setting.js";
import { ALONE } from "../../support/solve-text.js";

/** The scene of a plan that stands alone. */
export function sceneOf(text: string): Scene {
  return run(text, ALONE).scene();
}

/** The scene of a plan's first wall. */
export function wallOf(text: string): WallScene {
  return sceneOf(text).walls[0]!;
}

/** The picture of a plan that stands alone. */
export function pictureOf(text: string): string {
  return drawHeadless(sceneOf(text));
}

export function solvedOf(text: string): SolvedPlan {
  return solve(resolve(parse(text), ALONE).plan);
}

/** The first wall as solved, and the setting that its picture is drawn in. */
export function solvedWallOf(text: string): { solved: SolvedWall; setting: Setting } {
  const plan = solvedOf(text);
  return { solved: plan.walls[0]!, setting: settingOf(plan.plan) };
}

/** Statements of a plan with a plain tile and trim, in inches unless told otherwise. */
export function planOf(walls: string, units = "inch"): string {
  return [
    'plan "Test plan"',
    `units ${units}`,
    "bed 1/8 in",
    'tile field "wall tile" {\n  face 6in x 3in\n  thickness 3/8in\n}',
    'trim nose "bullnose" {\n  face 6in x 2in\n  thickness 3/8in\n}',
    walls,
    "",
  ].join("\n");
}

/** A wall of inches, 40 x 30, with what is put in it; its lay starts at the left and the bottom. */
export function wallText(inside = "", name = "back", lay = ""): string {
  return [
    `wall ${name} "Back wall" {`,
    "  size 40 x 30",
    inside,
    "  lay field {",
    lay ||
      "    bond running 1/2\n    joint 1/8\n    across full tile from left\n    up full course from bottom",
    "  }",
    "}",
  ].join("\n");
}
