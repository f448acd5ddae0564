import type { Nm } from "../measure/index.js";
import type { Edge, Side } from "./edge.js";
import type { Origin } from "./source.js";

/** A corner of a wall's outline, from the left substrate and the level line. */
export interface Corner {
  readonly x: Nm;
  readonly y: Nm;
}

/**
 * A rectangle between a wall's outline and the slopes of its sides, where there is no wall: what an upright
 * step in the outline leaves out. It reaches past the wall on the sides that meet no tile.
 */
export interface Step {
  readonly left: Nm;
  readonly bottom: Nm;
  readonly right: Nm;
  readonly top: Nm;
  /** What the tile beside, under or over it meets there, by the side of the step; null where no wall is. */
  readonly meets: Readonly<Record<Side, Edge | null>>;
}

/**
 * An upright part of a bottom or a top, beside a slope that ends there before the level, or the slope, that the side
 * steps to. The side's readings have two at its place.
 */
export interface Riser {
  readonly of: "bottom" | "top";
  readonly x: Nm;
  readonly low: Nm;
  readonly high: Nm;
  /** What the tile beside it meets there: of a left edge it stands right of the riser, of a right one left of it. */
  readonly edge: Edge;
}

/** A wall's end that runs down past the pan: `leg left 6 down 4 floor`. */
export interface Leg {
  readonly side: "left" | "right";
  readonly across: Nm;
  readonly down: Nm;
  /** What its foot meets. */
  readonly foot: Edge;
  readonly origin: Origin;
}
