import type { Nm } from "../../src/measure/index.js";
import type { OpeningKind, Side } from "../../src/model/index.js";

/** A plan before it is text: what tests turn round, rename, move and print in several units. */
export interface Sketch {
  readonly bed: Nm;
  readonly tile: { readonly across: Nm; readonly up: Nm; readonly thickness: Nm };
  readonly trim: { readonly along: Nm; readonly across: Nm };
  /** A second tile. */
  readonly accent?: Sketch["tile"];
  readonly walls: readonly WallSketch[];
  /** What is wanted of all walls, the most wanted first. */
  readonly wishes?: readonly WishSketch[];
}

/** As the language writes it, or no cut under a size. */
export type WishSketch = string | { readonly noCutUnder: Nm };

export interface WallSketch {
  readonly name: string;
  readonly across: Nm;
  readonly up: Nm;
  readonly sides: Readonly<Record<Side, SideSketch>>;
  readonly openings: readonly OpeningSketch[];
  readonly holes: readonly HoleSketch[];
  readonly lay: LaySketch;
  /** In place of its size; anticlockwise. */
  readonly outline?: readonly (readonly [x: Nm, y: Nm])[];
  readonly legs?: readonly LegSketch[];
  /** A second lay, of the accent; the other one has the rest. */
  readonly second?: SecondLay;
  /** So many courses of the field, then one of the accent, then the field again, in one block. */
  readonly list?: number;
  /** What is wanted of this wall, before what is of all. */
  readonly wishes?: readonly WishSketch[];
}

export interface LegSketch {
  readonly side: "left" | "right";
  readonly across: Nm;
  readonly down: Nm;
}

export interface SecondLay {
  readonly place:
    | { readonly covers: Side; readonly to: Nm }
    | { readonly x: Nm; readonly y: Nm; readonly across: Nm; readonly up: Nm }
    | { readonly courses: number };
  readonly lay: LaySketch;
}

export interface SideSketch {
  /** As the language writes it: `pan`, `free trim edging`, `corner back under`. */
  readonly meets: string;
  readonly measured: readonly (readonly [at: Nm, off: Nm])[];
  readonly movement: Nm | null;
}

export interface OpeningSketch {
  readonly kind: OpeningKind;
  readonly name: string;
  readonly x: Nm;
  readonly y: Nm;
  readonly across: Nm;
  readonly up: Nm;
  readonly movement: Nm | null;
  readonly frame: { readonly join: "mitre" | "butt"; readonly inset: Nm } | null;
  /** How far it may stand further right and up. */
  readonly free?: { readonly across: Nm; readonly up: Nm };
  /** Whether its height is left out: a bench and a curb then stand on the floor, a soffit hangs. */
  readonly reaches?: boolean;
}

export interface HoleSketch {
  readonly name: string;
  readonly x: Nm;
  readonly y: Nm;
  readonly across: Nm;
}

export interface LaySketch {
  readonly bond: "stack" | { readonly p: number; readonly q: number };
  readonly joint: Nm | { readonly min: Nm; readonly max: Nm };
  /** null: left to the solver. */
  readonly across:
    | { readonly kind: "tile" | "joint"; readonly on: "wall" | { readonly opening: string } }
    | { readonly kind: "tile" | "joint"; readonly at: Nm }
    | { readonly full: "left" | "right" }
    /** Round the corner with that wall. */
    | { readonly goesOn: "wrapped added" | "wrapped swallowed" | "mirrored"; readonly from: string }
    | null;
  readonly up:
    | { readonly full: "bottom" | "top" }
    | { readonly relation: "under" | "over"; readonly opening: string }
    | { readonly jointAt: Nm }
    | null;
  /** What is set already, as the language writes it without lengths: from and to; and where the last top was measured. */
  readonly set?: SetSketch;
}

export interface SetSketch {
  readonly from: number;
  readonly to: number;
  readonly tops: readonly { readonly at: "left" | "right" | Nm | null; readonly y: Nm }[];
}
