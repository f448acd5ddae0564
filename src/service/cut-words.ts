import type { Cut } from "../solver/index.js";

/** What each cut is called, as a setter says it. */
export const CUT_WORDS: Readonly<Record<Cut, string>> = {
  none: "whole tile",
  end: "end cut",
  rip: "rip",
  corner: "corner cut",
  notch: "L cut",
  slot: "U cut",
  scribe: "scribe",
  hole: "cut round a hole",
};
