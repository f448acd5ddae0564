import type { Nm } from "../measure/index.js";
import type { AllowingBlock } from "./allow.js";
import type { Edge, Side } from "./edge.js";
import type { Lay } from "./lay.js";
import type { Hole, Opening } from "./opening.js";
import type { Corner, Leg, Riser, Step } from "./outline.js";
import type { Range } from "./wish.js";

/** A bare wall: x runs right from its left substrate, y up from the level line. */
export interface Wall extends AllowingBlock {
  readonly name: string;
  readonly title: string;
  readonly size: { readonly across: Nm; readonly up: Nm };
  /** The heights that the tile may stop at; `size` has the lower end until the solver has settled it. */
  readonly stop: Range | null;
  readonly edges: Readonly<Record<Side, Edge>>;
  /** The corners of a wall that is no rectangle, anticlockwise; null for one that is. */
  readonly outline: readonly Corner[] | null;
  /** What its outline and its legs leave out of the rectangle between its sides. */
  readonly steps: readonly Step[];
  /** Where the line of an outlined bottom or top jumps. */
  readonly risers: readonly Riser[];
  readonly legs: readonly Leg[];
  readonly openings: readonly Opening[];
  readonly holes: readonly Hole[];
  /** In the order of the text; none where the wall has no lay, or none that could be understood. */
  readonly lays: readonly Lay[];
}
