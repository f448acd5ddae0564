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

/** A rectangular opening: a window, a niche, or a door (which goes down to the floor). */
export interface Opening extends AllowingBlock {
  readonly kind: "window" | "niche" | "door";
  readonly name: string;
  /** Its lower left corner, from the left substrate and the level line. */
  readonly at: { readonly x: Nm; readonly y: Nm };
  /** Where the plan leaves its place free; `at` is the lower end until the solver has settled it. */
  readonly free: { readonly x: Range | null; readonly y: Range | null };
  readonly size: { readonly across: Nm; readonly up: Nm };
  readonly frame: Frame | null;
  /** Soft joint round the opening; null when the plan doesn't say. */
  readonly movement: Nm | null;
}

/** A round hole: `hole NAME at X, Y across D`. */
export interface Hole {
  readonly name: string;
  readonly at: { readonly x: Nm; readonly y: Nm };
  /** Its diameter. */
  readonly across: Nm;
  readonly origin: Origin;
}
