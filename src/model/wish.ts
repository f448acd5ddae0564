import type { Nm } from "../measure/index.js";
import type { Opening } from "./opening.js";
import type { Origin } from "./source.js";

/** A stretch within which the solver may choose; `min` is less than `max`. */
export interface Range {
  readonly min: Nm;
  readonly max: Nm;
}

/** An opening of one of the plan's walls. */
export interface WallOpening {
  readonly wall: string;
  /** By its name: the opening itself may stand elsewhere once the room is solved. */
  readonly opening: Opening["name"];
}

/** What is wanted of a layout. */
export type Wanted =
  /** At every corner the bed joints of both walls stand at one height. */
  | { readonly kind: "courses-meet" }
  /** At every corner the bond is wrapped, mirrored or begun again. */
  | { readonly kind: "bond-goes-on" }
  /** The middle of a tile or of a joint of course 1 stands on the opening's. */
  | { readonly kind: "centre"; readonly on: WallOpening }
  /** No cut piece whose visible width or height is under this. */
  | { readonly kind: "no-cut"; readonly under: Nm }
  /** A bed joint at the opening's sill or head: the courses beside it are not ripped. */
  | { readonly kind: "whole-at-opening"; readonly at: "sill" | "head"; readonly of: WallOpening }
  /** The lowest course is whole at the lowest point, or the highest at the highest. */
  | { readonly kind: "whole-at-side"; readonly at: "bottom" | "top" }
  /** The left ends of the courses are as wide as the right ones. */
  | { readonly kind: "equal-ends" }
  | { readonly kind: "few-cuts" };

/** A line of `prefer { ... }`. */
export interface Wish {
  readonly wanted: Wanted;
  /** The wall that it is for; null for the whole room. */
  readonly wall: string | null;
  readonly origin: Origin;
}
