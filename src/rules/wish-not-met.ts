import type { Wish } from "../model/index.js";
import { measureRoom, type SolvedPlan, type SolvedWall, wishOutcomes } from "../solver/index.js";
import type { Finding, Rule } from "./rule.js";
import { isMet, missWords, priceWords, wishWords } from "./wish-words.js";

/** A wish that isn't met, with what it would cost: the plan's own ranks decided, and a person may rank anew. */
export const wishNotMet: Rule = {
  code: "wish/not-met",
  severity: "information",
  title: "a wish of the plan is not met",
  source: "the plan's own wishes",
  limit: null,
  check: (wall, plan) => {
    const outcomes = wishOutcomes(plan).filter((outcome) => !isMet(outcome));
    return outcomes
      .filter(({ wish }) => toldAt(wish, plan) === wall)
      .map((outcome): Finding => {
        const { wish, missed } = outcome;
        const { asked } = plan.room!;
        const own = measureRoom(plan.plan, plan.walls, asked.wishes);
        const { units } = plan.plan;
        return {
          origin: wish.origin,
          blocks: wish.wall === null ? [] : [wall.wall],
          message:
            `the wish \`${wishWords(wish, units)}\` is not met: ${missWords(wish, missed, units)}; ` +
            priceWords(outcome, own, asked.wishes, units),
        };
      });
  },
};

/** The wall that a wish speaks of; for one of the whole room, the first. */
function toldAt({ wanted, wall }: Wish, { walls }: SolvedPlan): SolvedWall | undefined {
  const name =
    wanted.kind === "centre"
      ? wanted.on.wall
      : wanted.kind === "whole-at-opening"
        ? wanted.of.wall
        : wall;
  return walls.find((each) => name === null || each.wall.name === name);
}
