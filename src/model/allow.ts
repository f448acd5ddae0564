import type { Origin } from "./source.js";

/** `allow CODE "reason"`: silences one rule in the block it stands in. */
export interface Allow {
  readonly code: string;
  readonly reason: string;
  readonly origin: Origin;
}

/** A block of the plan in which an `allow` may stand. */
export interface AllowingBlock {
  readonly origin: Origin;
  readonly allows: readonly Allow[];
}
