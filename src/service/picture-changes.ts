import { headline, overlayOf } from "../compare/index.js";
import type { Fate, OverlayWall, Points } from "../drawing/index.js";
import type { Outcome } from "../engine.js";
import { type Compared, isWhole } from "./compared.js";
import type { OldPlan, PictureChanges, WallMarks } from "./comparison.js";
import type { DocumentState } from "./document-state.js";
import { MOST_DRAWN } from "./simplify-scene.js";

/**
 * The changed pieces of a document. Only told in words where there are too many to be marked one by
 * one; null while the text can't be understood whole.
 */
export function pictureChanges(
  { document, outcome }: DocumentState,
  old: OldPlan,
  compared: Compared,
): PictureChanges | null {
  if (!isWhole(outcome)) return null;
  const comparison = compared.of(old.outcome, outcome);
  const marked = comparison.walls.some(({ name }) => name.after !== null);
  const large = piecesIn(outcome) > MOST_DRAWN || piecesIn(old.outcome) > MOST_DRAWN;
  const { uri, version } = document;
  return {
    uri,
    version,
    headline: headline(comparison),
    walls:
      marked && !large ? overlayOf(old.outcome, outcome).walls.map(marksOf).filter(isMarked) : [],
  };
}

export function piecesIn({ solved }: Outcome): number {
  return solved.walls
    .flatMap(({ lays }) => lays)
    .reduce((sum, { pieces }) => sum + pieces.count, 0);
}

function marksOf({ base, groups }: OverlayWall): WallMarks {
  const ringsOf = (fate: Fate): readonly Points[] =>
    groups.filter((group) => group.fate === fate).flatMap(({ shapes }) => shapes.flat());
  return {
    wall: base.name,
    recut: ringsOf("recut"),
    fresh: ringsOf("fresh"),
    gone: ringsOf("gone"),
  };
}

function isMarked({ recut, fresh, gone }: WallMarks): boolean {
  return recut.length + fresh.length + gone.length > 0;
}
