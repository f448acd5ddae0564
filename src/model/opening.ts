import type { Nm } from "../measure/index.js";
import type { AllowingBlock } from "./allow.js";
import type { Bond } from "./lay.js";
import type { Origin } from "./source.js";
import type { Tile, Trim } from "./tile.js";
import type { Range } from "./wish.js";

/** Trim round an opening. */
export interface Frame {
  readonly trim: Trim;
  readonly join: "mitre" | "butt";
  /** How far the frame's inner edge stands inside the opening. */
  readonly inset: Nm;
  readonly origin: Origin;
}

/** The surfaces inside an opening that has a depth, as one looks at it; a window has no back. */
export const INSIDE_FACES = ["back", "left", "right", "sill", "head"] as const;

export type InsideFace = (typeof INSIDE_FACES)[number];

/** What a surface inside an opening is called. */
export function faceWords(face: InsideFace): string {
  return face === "left" || face === "right" ? `${face} side` : face;
}

/** How one surface inside an opening is laid where the plan says so itself; what is null goes on as on the wall. */
export interface InsideLay extends AllowingBlock {
  readonly tile: Tile;
  readonly bond: Bond | null;
  readonly joint: Nm | null;
  readonly across: InsideAcross | null;
  readonly up: InsideUp | null;
}

/** How a surface inside an opening starts across, as it is folded out round the back. */
export type InsideAcross =
  /** On the surface's own middle, on the wall's, or at a place of the wall. */
  | {
      readonly kind: "tile" | "joint";
      readonly centre:
        { readonly on: "surface" | "wall" } | { readonly on: "place"; readonly x: Nm };
    }
  | { readonly kind: "full-tile"; readonly from: "left" | "right" };

/** Where the courses of a surface inside an opening stand, as it is folded out; `y` is the wall's. */
export type InsideUp =
  | { readonly kind: "full-course"; readonly from: "bottom" | "top" }
  | { readonly kind: "joint"; readonly y: Nm };

/** How deep an opening is, or how far a solid thing stands out, and how what lies level there drains. */
export interface Inside {
  /** From the wall's substrate to the back; of a bench or a curb, to its front. */
  readonly depth: Nm;
  /**
   * How much its sill (a bench's or a curb's top) falls towards the room over the depth; negative where
   * it slopes back into the wall, null when the plan doesn't say.
   */
  readonly fall: Nm | null;
  /** Whether its surfaces are tiled: those of a niche or a window that has a depth, unless the plan says `untiled`. */
  readonly tiled: boolean;
  /** Those that are laid otherwise than the wall. */
  readonly lays: Readonly<Partial<Record<InsideFace, InsideLay>>>;
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
  /** null where the plan states no depth. */
  readonly inside: Inside | null;
}

/** Whether it stands before the wall, which goes on behind it. */
export function isSolid({ kind }: Pick<Opening, "kind">): boolean {
  return kind === "bench" || kind === "curb" || kind === "soffit";
}

/** The kinds that may have a depth: a door has no sill that is tiled, a soffit none at all. */
export function mayHaveDepth({ kind }: Pick<Opening, "kind">): boolean {
  return kind === "niche" || kind === "window" || kind === "bench" || kind === "curb";
}

/** What covers a hole once all is set, its middle on the hole's: a round plate, or one with four sides. */
export type Plate =
  | { readonly kind: "round"; readonly across: Nm }
  | { readonly kind: "square"; readonly across: Nm; readonly up: Nm };

/** A round hole: `hole NAME at X, Y across D`, and what covers it. */
export interface Hole {
  readonly name: string;
  readonly at: { readonly x: Nm; readonly y: Nm };
  /** Its diameter. */
  readonly across: Nm;
  /** null where the plan states none. */
  readonly plate: Plate | null;
  readonly origin: Origin;
}

/** How wide and how high a plate is. */
export function plateSize(plate: Plate): { readonly across: Nm; readonly up: Nm } {
  return { across: plate.across, up: plate.kind === "round" ? plate.across : plate.up };
}

/** How far a hole's plate reaches from its middle, each way, rounded up to the nanometre; 0 without one. */
export function plateReach({ plate }: Pick<Hole, "plate">): {
  readonly across: Nm;
  readonly up: Nm;
} {
  if (!plate) return { across: 0, up: 0 };
  const { across, up } = plateSize(plate);
  return { across: Math.ceil(across / 2), up: Math.ceil(up / 2) };
}
