import type { Hole } from "../model/index.js";
import type { SolvedPlan, SolvedWall } from "../solver/index.js";
import { plateOvers, type PlateOver } from "./plate-overs.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE } from "./trade.js";
import { length, openingName } from "./words.js";

/**
 * A plate that doesn't lie on tile alone: it runs past the tile's side, onto an opening's frame or joint, or
 * over the edge of a band, and neither lies flat nor looks meant.
 */
export const holePlateOver: Rule = {
  code: "hole/plate-over",
  severity: "warning",
  title: "a plate runs past the tile, onto an opening's trim, or over a band's edge",
  source: COMMON_PRACTICE,
  limit: null,
  check: (wall, plan) =>
    wall.wall.holes.flatMap((hole) =>
      plateOvers(wall, hole).map((over) => findOver(hole, over, wall, plan)),
    ),
};

function findOver(hole: Hole, over: PlateOver, { wall }: SolvedWall, plan: SolvedPlan): Finding {
  const lays = over.kind === "band" ? [over.band.lay.lay, over.band.lay.lay.tile] : [];
  const openings = over.kind === "opening" ? [over.opening] : [];
  return {
    origin: hole.origin,
    blocks: [...openings, ...lays, wall],
    message:
      `the plate of ${hole.name} runs ${length(plan, over.by)} ${overWords(over)}; ` +
      `a plate on tile alone, so its middle ${mendWords(over, plan)}, is wanted`,
  };
}

function overWords(over: PlateOver): string {
  switch (over.kind) {
    case "side":
      return `past the ${over.side} of the wall's tile`;
    case "opening": {
      const { frame } = over.opening;
      return `onto the ${frame ? "frame" : "joint"} of ${openingName(over.opening)}`;
    }
    case "band":
      return `over the ${over.edge} of band ${over.band.lay.lay.name}`;
  }
}

/** `1/2 in further left`. */
function mendWords({ mend: { x, y } }: PlateOver, plan: SolvedPlan): string {
  if (x !== 0) return `${length(plan, Math.abs(x))} further ${x < 0 ? "left" : "right"}`;
  return `${length(plan, Math.abs(y))} ${y < 0 ? "lower" : "higher"}`;
}
