import type { SolvedLay, SolvedWall } from "../../solver/index.js";
import type { Fate, HoleScene, Points, Scene, WallScene } from "../scene.js";

export type LayFates = ReadonlyMap<SolvedLay, readonly (Fate | null)[]>;

/** A wall before and after, and what became of each of its pieces; null is a piece that was kept. */
export interface ComparedWall {
  readonly before: SolvedWall | null;
  readonly after: SolvedWall | null;
  /** What became of each piece, lay by lay. */
  readonly fates: { readonly before: LayFates; readonly after: LayFates };
  /** What is written over the wall. */
  readonly notes: readonly string[];
}

/** Two plans in one picture. JSON-able data, as a Scene is; lengths are millimetres of wall. */
export interface OverlayScene extends Omit<Scene, "walls"> {
  readonly walls: readonly OverlayWall[];
}

export interface OverlayWall {
  /** The wall as it is (where it is gone: as it was), without its pieces. */
  readonly base: WallScene;
  readonly groups: readonly FateGroup[];
  /** What was elsewhere: drawn as dashed outlines. */
  readonly was: {
    readonly bare: Points | null;
    readonly pieces: readonly Points[];
    readonly openings: readonly Points[];
    readonly holes: readonly HoleScene[];
  };
}

/** Pieces of one course that share a fate. */
export interface FateGroup {
  readonly fate: Fate | null;
  readonly course: number;
  /** Each piece's rings. */
  readonly shapes: readonly (readonly Points[])[];
}
