import { buildScene, type Scene } from "../drawing/index.js";
import type { Diagnostic } from "../model/index.js";
import type { SolvedWall } from "../solver/index.js";
import { compare } from "./compare.js";
import type { Change, ComparedPlan } from "./comparison.js";
import { matchPlans } from "./match-plan.js";
import { wallChanged } from "./totals.js";

/** One wall in both states. */
export interface WallSides {
  readonly wall: string;
  readonly scene: Scene;
}

/**
 * Every wall that changed (all where none did), each in a picture of its own: as it was and beside it
 * as it is, with findings and dimensions. A new or gone wall stands alone.
 */
export function sideBySide(before: ComparedPlan, after: ComparedPlan): readonly WallSides[] {
  const { walls } = matchPlans(before.solved, after.solved);
  const { walls: told } = compare(before, after);
  const changed = walls.filter((_, i) => wallChanged(told[i]!));
  return (changed.length > 0 ? changed : walls).map((pair) => ({
    wall: (pair.after ?? pair.before)!.wall.name,
    scene: sidesOf(pair, before, after),
  }));
}

function sidesOf(pair: Change<SolvedWall>, before: ComparedPlan, after: ComparedPlan): Scene {
  const states = [
    { wall: pair.before, plan: before, when: "before" },
    { wall: pair.after, plan: after, when: "after" },
  ] as const;
  const shown: SolvedWall[] = [];
  const found: Diagnostic[] = [];
  for (const { wall, plan, when } of states) {
    if (!wall) continue;
    shown.push(calledBy(wall, when));
    found.push(...findingsOf(plan, wall.wall.name, when));
  }
  const plan = { ...after.solved.plan, walls: shown.map(({ wall }) => wall) };
  return buildScene({ plan, walls: shown }, found);
}

type When = "before" | "after";

/** Both walls stand in one picture, so each needs a name of its own. */
function calledBy(solved: SolvedWall, when: When): SolvedWall {
  const { wall } = solved;
  const title = `${wall.title || wall.name}, ${when}`;
  const name = nameBy(wall.name, when);
  const lays = solved.lays.map((lay) => ({
    ...lay,
    idPrefix: name + lay.idPrefix.slice(wall.name.length),
  }));
  return { ...solved, wall: { ...wall, name, title }, lays };
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
