import type { Nm } from "../measure/index.js";
import type { AllowingBlock } from "./allow.js";
import type { Money, Share, TilePrice } from "./stock.js";

/** A field tile: `tile NAME "title" { ... }`. */
export interface Tile extends AllowingBlock {
  readonly name: string;
  readonly title: string;
  /** The real face as laid: across and up. */
  readonly face: { readonly across: Nm; readonly up: Nm };
  readonly thickness: Nm;
  /** Largest minus smallest face in the lot; null when the plan doesn't say. */
  readonly variation: Nm | null;
  /** How far its longest edge bows, of the tile in the lot that bows most; null when the plan doesn't say. */
  readonly warpage: Nm | null;
  readonly edges: "pressed" | "rectified" | null;
  /** Pieces in a box; null when the plan doesn't say. */
  readonly box: number | null;
  /** It may not be turned, for its pattern, its glaze or its light has a direction. */
  readonly directional: boolean;
  /** The lot to buy it from; null when the plan doesn't say. */
  readonly lot: string | null;
  readonly price: TilePrice | null;
  /** The share of the pieces that may break; null when the plan doesn't say. */
  readonly breakage: Share | null;
  /** Pieces to keep for repairs; null when the plan doesn't say. */
  readonly spares: number | null;
}

/** A trim tile or profile: `trim NAME "title" { ... }`. */
export interface Trim extends AllowingBlock {
  readonly name: string;
  readonly title: string;
  /** Along the edge it trims, and across it (its width). */
  readonly face: { readonly along: Nm; readonly across: Nm };
  readonly thickness: Nm;
  /** The lot to buy it from; null when the plan doesn't say. */
  readonly lot: string | null;
  /** What a piece costs. */
  readonly price: Money | null;
}
