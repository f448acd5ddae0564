import type { Nm } from "../../measure/index.js";
import type { FieldJoint, Lay, Origin } from "../../model/index.js";
import type { Box } from "../box.js";
import type { Shape } from "../shape.js";
import type { SolvedLay } from "../solved.js";

/** What of a soft joint stands in one lay, or between lays. */
export interface SoftPart {
  /** null between two lays. */
  readonly lay: SolvedLay | null;
  readonly bounds: Box;
  readonly shape: Shape;
}

/** A soft joint in the field of tile as it is laid, as wide as the joint that it fills. */
export interface SoftRun {
  readonly way: "upright" | "level";
  readonly origin: Origin;
  /** The lay whose block states it. */
  readonly lay: Lay;
  readonly name: SoftName;
  /** Its two sides: x of an upright one, y of a level one. */
  readonly from: Nm;
  readonly to: Nm;
  /** From where to where it parts the tile, openings or not: y of an upright one, x of a level one. */
  readonly reach: { readonly from: Nm; readonly to: Nm };
  /** What is filled, without what openings, holes and level soft joints take of it. */
  readonly parts: readonly SoftPart[];
}

/** How a soft joint is told. */
export type SoftName =
  /** By the middle of the head joint. */
  | { readonly kind: "head"; readonly x: Nm }
  /** Over a course of a lay, counted in that lay. */
  | { readonly kind: "bed"; readonly lay: SolvedLay; readonly course: number }
  | { readonly kind: "between"; readonly lays: readonly [SolvedLay, SolvedLay] };

/** Why a lay has no joint where the plan wants a soft one. */
export type SoftMiss =
  /** Its head joints are shifted from course to course. */
  | "shifted"
  /** The place is beside its tile, or it has one tile a course. */
  | "no-head-joint"
  /** A tile of the block's list has its head joints elsewhere. */
  | "out-of-line"
  /** It has no such course. */
  | "no-course"
  /** No tile stands over that course. */
  | "nothing-over"
  /** The same joint was said before. */
  | "twice";

/** A soft joint that the plan states and that isn't there. */
export interface MissedJoint {
  readonly lay: Lay;
  readonly joint: FieldJoint;
  readonly why: SoftMiss;
  /** How many courses the block has. */
  readonly courses: number;
}

export interface SoftJoints {
  /** Level ones first, from the bottom up; then upright ones, from left to right. */
  readonly runs: readonly SoftRun[];
  readonly missed: readonly MissedJoint[];
}
