import type { SolvedWall, Unsettled } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { openingName, verb } from "./words.js";

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
      .map((each) => (each.opening === null ? ofHeight(wall, each) : ofOpening(wall, each))),
};

function ofHeight({ wall }: SolvedWall, unsettled: Unsettled): Finding {
  const ends = unsettled.why === "spans" ? `ends the ${named(unsettled)}` : "ends no lay's tile";
  return {
    origin: wall.origin,
    blocks: [wall],
    message:
      `wall "${wall.name}" may stop at a range of heights, which ${ends}, so that it stays at the lowest; ` +
      "one height is wanted, or a range that ends one lay",
  };
}

function ofOpening({ wall }: SolvedWall, unsettled: Unsettled): Finding {
  const opening = wall.openings.find(({ name }) => name === unsettled.opening)!;
  const told = {
    spans: `may come to lie past the edges of the ${named(unsettled)}`,
    outside: "may come to lie in no lay",
    moves: `would move the ${named(unsettled)}, which ${verb(unsettled.lays.length, "starts", "start")} from it`,
  };
  const wanted =
    unsettled.why === "moves"
      ? "its own place is wanted, or a start that doesn't hang from it"
      : "its own place is wanted, or a range in which one lay has all that it takes";
  return {
    origin: opening.origin,
    blocks: [opening, wall],
    message: `${openingName(opening)} ${told[unsettled.why]}, so that it stays where its range begins; ${wanted}`,
  };
}

/** `lay "field"`, `lays "dado" and "field"`. */
function named({ lays }: Unsettled): string {
  return `${verb(lays.length, "lay", "lays")} ${lays.map((lay) => `"${lay}"`).join(" and ")}`;
}
