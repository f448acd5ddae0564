import type { Nm } from "../measure/index.js";
import type { AllowingBlock } from "./allow.js";
import type { Origin } from "./source.js";
import type { Trim } from "./tile.js";
import type { Range } from "./wish.js";

/** Trim round an opening. */
export interface Frame {
  readonly trim: Trim;
  readonly join: "mitre" | "butt";
  /** How far the frame's inner edge stands inside the opening. */
  readonly inset: Nm;
  readonly origin: Origin;
}

/** What takes a rectangle from the tile: an opening in the wall, or a thing that stands before it. */
export const OPENING_KINDS = ["window", "niche", "door", "bench", "curb", "soffit"] as const;

export type OpeningKind = (typeof OPENING_KINDS)[number];

/**
 * A rectangular opening (a window, a niche, a door) or a solid thing before the wall (a bench, a curb,
 * a soffit): no tile is set behind either, and a joint runs round it.
 */
export interface Opening extends AllowingBlock {
  readonly kind: OpeningKind;
  readonly name: string;
  /** What it goes on to, past its rectangle: a door, a bench or a curb stands on the floor. */
  readonly reaches: "floor" | "ceiling" | null;
  /** Its lower left corner, from the left substrate and the level line. */
  readonly at: { readonly x: Nm; readonly y: Nm };
  /** Where the plan leaves its place free; `at` is the lower end until the solver has settled it. */
  readonly free: { readonly x: Range | null; readonly y: Range | null };
  readonly size: { readonly across: Nm; readonly up: Nm };
  readonly frame: Frame | null;
  /** Soft joint round the opening; null when the plan doesn't say. */
  readonly movement: Nm | null;
}

/** Whether it stands before the wall, which goes on behind it. */
export function isSolid({ kind }: Pick<Opening, "kind">): boolean {
  return kind === "bench" || kind === "curb" || kind === "soffit";
}

/** A round hole: `hole NAME at X, Y across D`. */
export interface Hole {
  readonly name: string;
  readonly at: { readonly x: Nm; readonly y: Nm };
  /** Its diameter. */
  readonly across: Nm;
  readonly origin: Origin;
}
