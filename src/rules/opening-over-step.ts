import type { Nm } from "../measure/index.js";
import type { Opening } from "../model/index.js";
import { frameOuter, openingBox, type SolvedPlan, type SolvedWall } from "../solver/index.js";
import { floorSteps } from "./floor-steps.js";
import type { Finding, Rule } from "./rule.js";
import { COMMON_PRACTICE } from "./trade.js";
import { length, openingName } from "./words.js";

/** A door, with its frame, that stands across a step of the floor: each jamb is then on a floor of its own, and no leaf clears both. */
export const openingOverStep: Rule = {
  code: "opening/over-step",
  severity: "warning",
  title: "a door stands across a step of the floor",
  source: COMMON_PRACTICE,
  limit: null,
  check: (wall, plan) =>
    wall.wall.openings.flatMap((opening) => findOver(wall, plan, opening) ?? []),
};

/** The places at which the floor steps under a door and its frame. */
export function stepsUnder(wall: SolvedWall, opening: Opening): { at: Nm; rise: Nm }[] {
  if (opening.kind !== "door") return [];
  const { left, right } = frameOuter(opening) ?? openingBox(opening);
  return floorSteps(wall.wall).filter(({ at }) => left < at && at < right);
}

function findOver(wall: SolvedWall, plan: SolvedPlan, opening: Opening): Finding | null {
  const steps = stepsUnder(wall, opening);
  const [first] = steps;
  if (!first) return null;
  const highest = steps.reduce((most, step) =>
    Math.abs(step.rise) > Math.abs(most.rise) ? step : most,
  );
  const rise = length(plan, Math.abs(highest.rise));
  const more = steps.length > 1 ? ` (and ${steps.length - 1} more)` : "";
  return {
    origin: opening.origin,
    blocks: [opening, wall.wall],
    message:
      `${openingName(opening)}${opening.frame ? " with its frame" : ""} stands across a step of the floor, ` +
      `${rise} ${highest.rise > 0 ? "up" : "down"} at ${length(plan, highest.at)}${more}; one floor under both jambs is wanted`,
  };
}
