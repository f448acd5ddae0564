import {
  type Comparison,
  headline,
  overlayOf,
  sideBySide,
  summarise,
  wallHeadline,
} from "../compare/index.js";
import { buildScene, type Scene } from "../drawing/index.js";
import type { Outcome } from "../engine.js";
import { surfacesOf } from "../solver/index.js";
import { type Compared, isWhole } from "./compared.js";
import type {
  ChangedWall,
  ComparisonLook,
  ComparisonPicture,
  ComparisonWay,
  OldPlan,
  PlanComparison,
} from "./comparison.js";
import type { DocumentState } from "./document-state.js";
import { piecesIn } from "./picture-changes.js";
import { MOST_DRAWN } from "./simplify-scene.js";

/** What a document changes, with the picture that is looked at. */
export function buildComparison(
  { document, outcome }: DocumentState,
  old: OldPlan,
  { way, wall: wanted }: ComparisonLook,
  compared: Compared,
): PlanComparison {
  const comparison = compared.of(old.outcome, outcome);
  const changed = changedWalls(comparison);
  const wall = changed.find(({ name }) => name === wanted) ?? changed[0];
  const { uri, version } = document;
  return {
    uri,
    version,
    whole: isWhole(outcome),
    oldWhole: isWhole(old.outcome),
    headline: headline(comparison),
    sections: summarise(comparison),
    walls: changed,
    wall: wall?.name ?? null,
    picture: wall ? pictureOf(way, namesOf(comparison, wall.name), old.outcome, outcome) : null,
  };
}

function changedWalls(comparison: Comparison): ChangedWall[] {
  return comparison.walls.flatMap((wall) => {
    const told = wallHeadline(wall, comparison);
    if (told === null) return [];
    const name = (wall.name.after ?? wall.name.before)!;
    const title = (wall.name.after === null ? wall.title.before : wall.title.after)!;
    return [{ name, title: title === "" ? name : title, headline: told }];
  });
}

type Names = Comparison["walls"][number]["name"];

function namesOf({ walls }: Comparison, name: string): Names {
  return walls.find((wall) => (wall.name.after ?? wall.name.before) === name)!.name;
}

function pictureOf(
  way: ComparisonWay,
  names: Names,
  before: Outcome,
  after: Outcome,
): ComparisonPicture | null {
  const [old, now] = [alone(before, names.before), alone(after, names.after)];
  if (piecesIn(old) > MOST_DRAWN || piecesIn(now) > MOST_DRAWN) return null;
  switch (way) {
    case "sides":
      return { way, scene: sideBySide(old, now)[0]!.scene };
    case "overlay":
      return { way, scene: overlayOf(old, now) };
    case "slider":
      return { way, before: sceneOf(old), after: sceneOf(now) };
  }
}

/** A plan with one wall of its walls, or with none. */
function alone(outcome: Outcome, name: string | null): Outcome {
  const walls = surfacesOf(outcome.solved.walls).filter(({ wall }) => wall.name === name);
  const plan = { ...outcome.solved.plan, walls: walls.map(({ wall }) => wall) };
  const diagnostics = outcome.diagnostics.filter(({ wall }) => wall === name);
  return { ...outcome, solved: { ...outcome.solved, plan, walls }, diagnostics };
}

function sceneOf({ solved, diagnostics }: Outcome): Scene | null {
  return solved.walls.length === 0 ? null : buildScene(solved, diagnostics);
}
