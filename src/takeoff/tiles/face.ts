import type { Nm } from "../../measure/index.js";

/** What pieces are cut from, and what the saw takes. */
export interface Face {
  readonly across: Nm;
  readonly up: Nm;
  /** It may not be turned. */
  readonly directional: boolean;
  readonly kerf: Nm;
}
