import type { Nm } from "../measure/index.js";
import type { Origin } from "./source.js";

/** An amount of the plan's own money, in whole hundredths: the language knows no currency. */
export type Money = number;

/** What a tile costs: `price 42.50 a box`, `price 0.85 a piece`. */
export interface TilePrice {
  readonly hundredths: Money;
  readonly per: "box" | "piece";
}

/** A share of something, such as a breakage of 3 % as 3/100: in lowest terms, `q` is positive. */
export interface Share {
  readonly p: number;
  readonly q: number;
}

/** `saw { ... }`: what the tile is cut with. */
export interface Saw {
  /** What a cut takes away; null when the plan doesn't say. */
  readonly kerf: Nm | null;
  /** The longest cut that it makes; null when the plan doesn't say. */
  readonly longest: Nm | null;
  readonly origin: Origin;
}

/** Whole milligrams in a bag. */
export interface Bag {
  readonly mass: number;
}

/** `mortar "title" { ... }`: what the tile is set in. */
export interface Mortar {
  readonly title: string;
  /** The trowel's notch: its width and its depth. */
  readonly notch: { readonly width: Nm; readonly depth: Nm } | null;
  /** A bag, and the whole mm² that its maker says it covers. */
  readonly bag: (Bag & { readonly covers: number }) | null;
  /** The thickness of mortar that is spread on the tile's back. */
  readonly backButter: Nm | null;
  /** What a bag costs. */
  readonly price: Money | null;
  readonly origin: Origin;
}

/** `grout "title" { ... }`: what the joints are filled with. */
export interface Grout {
  readonly title: string;
  /** Whole grams in a litre as mixed: `density 1.6` (g/cm³) is 1600. */
  readonly density: number | null;
  readonly bag: Bag | null;
  /** What a bag costs. */
  readonly price: Money | null;
  readonly origin: Origin;
}

/** `sealant "title" { ... }`: what the soft joints are filled with. */
export interface Sealant {
  readonly title: string;
  /** Whole mm³ in a tube. */
  readonly tube: number | null;
  /** How deep a bead is. */
  readonly depth: Nm | null;
  /** What a tube costs. */
  readonly price: Money | null;
  readonly origin: Origin;
}

/** The stock that a plan may name once each; null where it doesn't. */
export interface Supplies {
  readonly saw: Saw | null;
  readonly mortar: Mortar | null;
  readonly grout: Grout | null;
  readonly sealant: Sealant | null;
}
