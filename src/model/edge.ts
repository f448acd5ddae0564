import type { Nm } from "../measure/index.js";
import type { Origin } from "./source.js";
import type { Trim } from "./tile.js";

export type Side = "left" | "right" | "bottom" | "top";

/** What a side of the wall meets. */
export type Meeting =
  | { readonly kind: "pan" | "tub" | "floor" | "ceiling" | "counter" | "wall" }
  /** `under`: the other wall's tile covers this edge; `over`: this wall's tile covers the other's. */
  | { readonly kind: "corner"; readonly wall: string; readonly lap: "under" | "over" }
  | { readonly kind: "free"; readonly trim: Trim | null };

/** A site reading: `at` along the side (from the left end, or up), `off` up or to the right. */
export interface Reading {
  readonly at: Nm;
  readonly off: Nm;
}

/** The joint between the tile and what it meets. */
export interface EdgeJoint {
  /** `movement` is soft (sealant), `joint` is hard (grout). */
  readonly kind: "movement" | "joint";
  readonly width: Nm;
}

export interface Edge {
  readonly side: Side;
  readonly meets: Meeting;
  /** In order of `at`; empty for a straight side. */
  readonly measured: readonly Reading[];
  /** null when the plan states the edge without a joint. */
  readonly joint: EdgeJoint | null;
  /** false for an edge that the plan leaves to the default. */
  readonly stated: boolean;
  /** The edge's statement; for an unstated edge, the wall's. */
  readonly origin: Origin;
}
