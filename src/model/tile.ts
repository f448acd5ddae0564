import type { Nm } from "../measure/index.js";
import type { AllowingBlock } from "./allow.js";

/** A field tile: `tile NAME "title" { ... }`. */
export interface Tile extends AllowingBlock {
  readonly name: string;
  readonly title: string;
  /** The real face as laid: across and up. */
  readonly face: { readonly across: Nm; readonly up: Nm };
  readonly thickness: Nm;
  /** Largest minus smallest face in the lot; null when the plan doesn't say. */
  readonly variation: Nm | null;
  readonly edges: "pressed" | "rectified" | null;
  /** Pieces in a box; null when the plan doesn't say. */
  readonly box: number | null;
}

/** A trim tile or profile: `trim NAME "title" { ... }`. */
export interface Trim extends AllowingBlock {
  readonly name: string;
  readonly title: string;
  /** Along the edge it trims, and across it (its width). */
  readonly face: { readonly along: Nm; readonly across: Nm };
  readonly thickness: Nm;
}
