import type { Nm, Unit } from "../measure/index.js";
import type { AllowingBlock } from "./allow.js";
import type { Limits } from "./limits.js";
import type { Supplies } from "./stock.js";
import type { Tile, Trim } from "./tile.js";
import type { Wall } from "./wall.js";
import type { Wish } from "./wish.js";

/** A plan with every name resolved. Parts that could not be understood are left out. */
export interface Plan extends AllowingBlock, Supplies {
  readonly title: string;
  readonly units: Unit;
  /** Mortar behind the tile, after embedding. */
  readonly bed: Nm;
  readonly limits: Limits;
  readonly tiles: readonly Tile[];
  readonly trims: readonly Trim[];
  /** In the order of the text. */
  readonly walls: readonly Wall[];
  /** The most wanted first: those of single walls, wall by wall, then the room's. */
  readonly wishes: readonly Wish[];
}
