import type { Opening } from "../model/index.js";
import type { SolvedPlan, SolvedWall, Unsettled } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { length, openingName, verb } from "./words.js";

/** What a plan leaves free that no lay alone can settle: it stays where it may first stand, which nobody chose. */
export const wallUnsettled: Rule = {
  code: "wall/unsettled",
  severity: "error",
  title: "a place or a height that is left free can't be settled",
  source: "a limit of this program's own",
  limit: null,
  check: (wall, plan) =>
    (plan.room?.unsettled ?? [])
      .filter((each) => each.wall === wall.wall.name)
      .map((each) =>
        each.opening === null ? ofHeight(wall, each, plan) : ofOpening(wall, each, plan),
      ),
};

function ofHeight({ wall }: SolvedWall, unsettled: Unsettled, plan: SolvedPlan): Finding {
  const ends = unsettled.why === "spans" ? `ends the ${named(unsettled)}` : "ends no lay's tile";
  const { min, max } = wall.stop!;
  return {
    origin: wall.origin,
    blocks: [wall],
    message:
      `wall "${wall.name}" may stop ${length(plan, min)} to ${length(plan, max)} up, which ${ends}, so that it stays at ${length(plan, min)}; ` +
      `one height is wanted, such as ${length(plan, min)}, or a range that ends one lay`,
  };
}

function ofOpening({ wall }: SolvedWall, unsettled: Unsettled, plan: SolvedPlan): Finding {
  const opening = wall.openings.find(({ name }) => name === unsettled.opening)!;
  const own = placeWords(plan, opening.at);
  const told = {
    spans: `reaches over the edge between the ${named(unsettled)} and is nowhere inside the tile and clear of what else is there`,
    outside: "may come to lie in no lay",
    moves: `would move the ${named(unsettled)}, which ${verb(unsettled.lays.length, "starts", "start")} from it`,
  };
  const wanted = {
    spans: "a range is wanted in which it is inside the tile and clear of the rest",
    outside: "a range is wanted in which it is inside the tile",
    moves: `its own place is wanted, such as ${own}, or a start that doesn't hang from it`,
  };
  return {
    origin: opening.origin,
    blocks: [opening, wall],
    message: `${openingName(opening)} at ${rangeWords(plan, opening)} ${told[unsettled.why]}, so that it stays at ${own}; ${wanted[unsettled.why]}`,
  };
}

/** `8 in to 12 in, 20 in`. */
function rangeWords(plan: SolvedPlan, { at, free }: Opening): string {
  return (["x", "y"] as const)
    .map((axis) => {
      const range = free[axis];
      return range
        ? `${length(plan, range.min)} to ${length(plan, range.max)}`
        : length(plan, at[axis]);
    })
    .join(", ");
}

function placeWords(plan: SolvedPlan, { x, y }: Opening["at"]): string {
  return `${length(plan, x)}, ${length(plan, y)}`;
}

/** `lay "field"`, `lays "dado" and "field"`. */
function named({ lays }: Unsettled): string {
  return `${verb(lays.length, "lay", "lays")} ${lays.map((lay) => `"${lay}"`).join(" and ")}`;
}
