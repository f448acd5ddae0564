import type { PieceGroup, WallScene } from "../drawing/index.js";
import type { OptionCard } from "../sheets/index.js";
import type { TextEdit } from "./edits.js";

/** One layout to choose: its words and figures, its picture, and what writes it into the text. */
export interface PlanOption extends OptionCard {
  /** Whether it is what the plan has. */
  readonly had: boolean;
  /** Its walls bare of dimensions and findings; those of a room in their order round it. */
  readonly walls: readonly WallScene[];
  /** Where a lay of several is meant: the tile of its wall's lays of other blocks. */
  readonly beside: readonly PieceGroup[];
  /** One edit of the document; empty where nothing is left to write, or its blocks aren't to be found. */
  readonly edits: readonly TextEdit[];
}

/** The layouts of a wall, or of the whole room, side by side. */
export interface OptionGroup {
  /** The wall's name; null for the room. */
  readonly wall: string | null;
  readonly title: string;
  /** Out of how many they were chosen, or why there are none. */
  readonly note: string;
  /** Best first. */
  readonly options: readonly PlanOption[];
}

/** The best few layouts of a version of a plan. */
export interface PlanOptions {
  readonly uri: string;
  readonly version: number;
  /** The wall that was asked for; null for all of the plan. */
  readonly wall: string | null;
  readonly groups: readonly OptionGroup[];
  /** How many walls more there are, of which nothing was worked out. */
  readonly more: number;
}
