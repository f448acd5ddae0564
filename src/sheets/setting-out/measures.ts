import type { Nm } from "../../measure/index.js";
import type { Limits } from "../../model/index.js";
import { judgeOf, type SolvedLay } from "../../solver/index.js";
import type { Measures } from "./slack.js";

/** The limits of a lay's pieces in one direction. */
export function measuresOf(
  lay: SolvedLay,
  limits: Limits,
  direction: "across" | "up",
  joint: Nm | null,
): Measures {
  const judge = judgeOf(lay.region, lay.lay, limits);
  if (direction === "up") {
    return { face: judge.up, half: judge.halfHeight, sliver: judge.sliverHeight, joint };
  }
  // A running bond forces the shorter of two alternating end cuts, which is held to the sliver alone.
  const half = judge.forcesEnds ? 0 : judge.halfWidth;
  return { face: judge.across, half, sliver: judge.sliverWidth, joint };
}
