import type { Nm } from "../measure/index.js";
import type { AllowingBlock } from "./allow.js";
import type { EdgeJoint, Side } from "./edge.js";
import type { Opening } from "./opening.js";
import type { Origin } from "./source.js";
import type { Tile } from "./tile.js";

/** `running p/q`: course n is shifted right by ((n - 1) mod q) x p/q of a module. */
export type Bond =
  { readonly kind: "stack" } | { readonly kind: "running"; readonly p: number; readonly q: number };

/** What `centred on` or `centred at` names. */
export type Centre =
  | { readonly on: "wall" }
  | { readonly on: "opening"; readonly opening: Opening }
  | { readonly on: "place"; readonly x: Nm };

/** How course 1 starts across the wall, from what the wall itself has. */
export type OwnStart =
  | { readonly kind: "tile" | "joint"; readonly centre: Centre }
  | { readonly kind: "full-tile"; readonly from: "left" | "right" };

/**
 * How course 1 goes on from the end of another wall at their corner. `wrapped`: with what is left of the
 * tile there, the corner's joint added to the tile or swallowed by it; `mirrored`: as that wall ends.
 */
export type CarriedStart = {
  readonly wall: string;
  /** This wall's side at the corner. */
  readonly corner: "left" | "right";
} & (
  | { readonly kind: "wrapped"; readonly joint: "added" | "swallowed" }
  | { readonly kind: "mirrored" }
);

/** How course 1 starts across the wall. */
export type AcrossStart = OwnStart | CarriedStart;

/** Where the courses stand. */
export type UpStart =
  | { readonly kind: "full-course"; readonly from: "bottom" | "top" }
  | { readonly kind: "at-opening"; readonly relation: "under" | "over"; readonly opening: Opening }
  | { readonly kind: "joint"; readonly y: Nm };

/** Where a lay ends at one side. */
export type LayBound =
  /** Its tile ends there: x for left and right, y for bottom and top. */
  | { readonly kind: "place"; readonly at: Nm }
  /** It begins one joint past the lay of that name. */
  | { readonly kind: "lay"; readonly lay: string };

/** The joint to the lays beside one, which may be soft as an edge's is. */
export interface LayJoint extends EdgeJoint {
  readonly origin: Origin;
}

/** What of the wall a lay has. */
export interface LayArea {
  /** A side without a bound is the wall's own. */
  readonly bounds: Readonly<Partial<Record<Side, LayBound>>>;
  /** How many courses it has, from the bottom up; null for as many as there is room for. */
  readonly courses: number | null;
  /** The joint to the lays beside it; null for a hard one, the wider of both lays' own. */
  readonly joint: LayJoint | null;
  /** Whether it is part of a lay that has what the wall's other lays leave. */
  readonly rest: boolean;
}

/** Where the top of the courses that are set was measured. */
export interface MeasuredTop {
  /** How far from the wall's left substrate; null: all along. */
  readonly at: Nm | null;
  /** Up from the level line. */
  readonly y: Nm;
}

/** Which courses of a lay are on the wall already. */
export interface SetCourses {
  /** The first and the last one that is set, counted from the lay's lowest course. */
  readonly from: number;
  readonly to: number;
  /** Where the top of the last one was measured, from left to right; none: as the plan has it. */
  readonly tops: readonly MeasuredTop[];
  readonly origin: Origin;
}

/**
 * A joint in the field of tile that is filled with sealant instead of grout, as wide as it is laid: the head joint
 * nearest to a place from the wall's left, or the bed joint over a course, counted from the block's lowest.
 */
export type FieldJoint =
  | { readonly kind: "head"; readonly x: Nm; readonly origin: Origin }
  | { readonly kind: "bed"; readonly over: number; readonly origin: Origin };

/** `lay TILE { ... }`: how a tile is laid on the wall. */
export interface Lay extends AllowingBlock {
  /** The tile's name, or the one that the plan gives it. */
  readonly name: string;
  /** null: what the wall's other lays leave. */
  readonly area: LayArea | null;
  /** The lay (of the same tile) whose head joints go on in this one; null where it starts by itself. */
  readonly goesOnFrom: string | null;
  /** What of it is on the wall already, up to its last course; null where nothing is. */
  readonly set: SetCourses | null;
  /** The soft joints in its block, which has one or more lays. */
  readonly soft: readonly FieldJoint[];
  readonly tile: Tile;
  readonly bond: Bond;
  /** The joint, or the range the solver may choose from; `min` equals `max` when it is fixed. */
  readonly joint: { readonly min: Nm; readonly max: Nm; readonly origin: Origin };
  /** null: left to the solver. */
  readonly across: AcrossStart | null;
  readonly up: UpStart | null;
}
