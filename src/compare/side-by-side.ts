import { buildScene, type Scene } from "../drawing/index.js";
import type { Diagnostic } from "../model/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import { compare } from "./compare.js";
import type { ComparedPlan } from "./comparison.js";
import { matchPlans } from "./match-plan.js";
import { wallChanged } from "./totals.js";

/** Every wall that changed, as it was and beside it as it is, each with its findings and dimensions. */
export function sideBySide(before: ComparedPlan, after: ComparedPlan): Scene {
  const { walls } = matchPlans(before.solved, after.solved);
  const { walls: told } = compare(before, after);
  const changed = walls.filter((_, i) => wallChanged(told[i]!));
  const shown: SolvedWall[] = [];
  const found: Diagnostic[] = [];
  for (const pair of changed.length > 0 ? changed : walls) {
    for (const [wall, plan, when] of [
      [pair.before, before, "before"],
      [pair.after, after, "after"],
    ] as const) {
      if (!wall) continue;
      shown.push(calledBy(wall, when));
      found.push(...findingsOf(plan, wall.wall.name, when));
    }
  }
  const plan = { ...after.solved.plan, walls: shown.map(({ wall }) => wall) };
  const both: SolvedPlan = { plan, walls: shown };
  return buildScene(both, found);
}

type When = "before" | "after";

/** Both walls stand in one picture, so each needs a name of its own. */
function calledBy(solved: SolvedWall, when: When): SolvedWall {
  const { wall } = solved;
  const title = `${wall.title || wall.name}, ${when}`;
  return { ...solved, wall: { ...wall, name: nameBy(wall.name, when), title } };
}

function findingsOf({ diagnostics }: ComparedPlan, wall: string, when: When): Diagnostic[] {
  return diagnostics
    .filter((found) => found.wall === wall)
    .map((found) => ({
      ...found,
      wall: nameBy(wall, when),
      ...(found.pieces && {
        pieces: found.pieces.map((id) => nameBy(wall, when) + id.slice(wall.length)),
      }),
    }));
}

function nameBy(wall: string, when: When): string {
  return `${wall}-${when}`;
}
