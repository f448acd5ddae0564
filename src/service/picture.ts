import type { Scene } from "../drawing/index.js";
import type { OpeningKind, Position, Severity, SourceRange } from "../model/index.js";

/** A stretch of a document. */
export interface DocumentPlace {
  readonly uri: string;
  readonly range: SourceRange;
}

/** What a finding says, where it stands in the text and what it speaks of on the wall. */
export interface PictureFinding {
  /** Its number in the picture's badge, or null where it has no place on a wall. */
  readonly number: string | null;
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  /** The published source, or "common practice"; null where a finding has none. */
  readonly source: string | null;
  /** The reason of the `allow` that silences it, or null. */
  readonly allowed: string | null;
  readonly wall: string | null;
  /** Ids of pieces, such as `back/1/3`. */
  readonly pieces: readonly string[];
  readonly place: DocumentPlace;
}

/** A block or statement of the plan that stands in the picture, to mark the one with the cursor. */
export interface PictureBlock {
  readonly kind: "wall" | "lay" | OpeningKind | "hole" | "edge" | "tile" | "trim";
  /** The wall it is on; null for a tile or a trim, which may be on any. */
  readonly wall: string | null;
  /** The opening's, hole's, tile's or trim's name, or the edge's side. */
  readonly name: string;
  readonly place: DocumentPlace;
}

export interface PictureWall {
  readonly name: string;
  readonly title: string;
  readonly counts: Readonly<Record<Severity, number>>;
}

/** What a preview shows of one version of a plan. */
export interface Picture {
  readonly uri: string;
  /** The text's version, as the editor counts. */
  readonly version: number;
  /** False when part of the text could not be understood: the last whole picture is the better one. */
  readonly whole: boolean;
  /** True when the plan is too large to be drawn piece by piece. */
  readonly simplified: boolean;
  readonly scene: Scene;
  /** Whether corners join walls of it, so that the room can be shown unfolded. */
  readonly unfolds: boolean;
  /** The room unfolded; null unless it was asked for, and unfolds. */
  readonly room: Scene | null;
  readonly walls: readonly PictureWall[];
  readonly findings: readonly PictureFinding[];
  /** Outer blocks before those inside them. */
  readonly blocks: readonly PictureBlock[];
}

/** A question about a spot of a wall: millimetres from its left substrate, and down from its level line. */
export interface SpotQuestion {
  readonly uri: string;
  readonly version: number;
  readonly wall: string;
  readonly x: number;
  readonly y: number;
}

/** What stands at a spot of a wall, in a setter's words. */
export interface SpotReading {
  /** Such as `Course 3, piece 5`. */
  readonly title: string;
  /** Names and figures with their units, such as `["visible", "2 9/16 x 2 7/8 in"]`. */
  readonly facts: readonly (readonly [name: string, figure: string])[];
  /** Its outline, x and y in turn as in the question; empty where it has none. */
  readonly outline: readonly number[];
  /** The id of the piece, or null for anything else. */
  readonly piece: string | null;
  /** The statement that made it. */
  readonly place: DocumentPlace;
}

/** A place of the text to mark in the picture. */
export interface Cursor {
  readonly uri: string;
  readonly position: Position;
}
