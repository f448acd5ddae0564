import type { Section } from "../compare/index.js";
import type { OverlayScene, Points, Scene } from "../drawing/index.js";
import type { Outcome } from "../engine.js";
import type { SourceRange } from "../model/index.js";

/** A plan that the text of a document is compared with. */
export interface OldPlan {
  /** Solves it, unless that is done: a host sees which files are asked for. */
  readonly prepare: () => void;
  readonly outcome: Outcome;
}

/** How the pictures of a comparison are shown: beside one another, over one another, or cut along a line. */
export type ComparisonWay = "sides" | "overlay" | "slider";

/** What of a comparison is looked at. */
export interface ComparisonLook {
  readonly way: ComparisonWay;
  /** The wall, as it is called now (a gone one: as it was); null for the first that changed. */
  readonly wall: string | null;
}

/** A wall that changed. */
export interface ChangedWall {
  readonly name: string;
  readonly title: string;
  /** Such as `12 cuts changed, 1 sliver new`. */
  readonly headline: string;
}

export type ComparisonPicture =
  | { readonly way: "sides"; readonly scene: Scene }
  | { readonly way: "overlay"; readonly scene: OverlayScene }
  /** Of a wall that is new or gone, one is null. */
  | { readonly way: "slider"; readonly before: Scene | null; readonly after: Scene | null };

/** What one version of a plan's text changes, in words, and in a picture of the wall that is looked at. */
export interface PlanComparison {
  readonly uri: string;
  /** The text's version, as the editor counts. */
  readonly version: number;
  /** False when part of the text could not be understood: the last whole comparison is the better one. */
  readonly whole: boolean;
  /** The same of the text that it is compared with. */
  readonly oldWhole: boolean;
  readonly headline: string;
  readonly sections: readonly Section[];
  /** In the order of the plan. */
  readonly walls: readonly ChangedWall[];
  /** The wall in the picture; null where none changed. */
  readonly wall: string | null;
  /** null where no wall changed, or where it is too large to be drawn piece by piece. */
  readonly picture: ComparisonPicture | null;
}

/** A line over a wall that changed. */
export interface ChangeLens {
  readonly wall: string;
  /** The wall's heading in the text. */
  readonly range: SourceRange;
  readonly text: string;
}

/** Pieces that changed, to be marked on a picture of the same version. */
export interface PictureChanges {
  readonly uri: string;
  readonly version: number;
  readonly headline: string;
  readonly walls: readonly WallMarks[];
}

/** Outlines of a wall's changed pieces, in millimetres from its left substrate, and down from its level line. */
export interface WallMarks {
  readonly wall: string;
  /** Cut differently: as they are now. */
  readonly recut: readonly Points[];
  readonly fresh: readonly Points[];
  /** As they were. */
  readonly gone: readonly Points[];
}
