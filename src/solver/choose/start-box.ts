import type { Nm } from "../../measure/index.js";
import type { Field } from "./field.js";

/**
 * All starts at one joint with a tile's left edge in course 1 from `x0` to `x1`, and a course's
 * bottom from `y0` to `y1`, ends included.
 */
export interface StartBox {
  readonly field: Field;
  readonly x0: Nm;
  readonly x1: Nm;
  readonly y0: Nm;
  readonly y1: Nm;
}

/** Where something may be, ends included. */
export interface Span {
  readonly from: Nm;
  readonly to: Nm;
}

/** The span moved by so much. */
export function movedSpan({ from, to }: Span, by: Nm): Span {
  return { from: from + by, to: to + by };
}
