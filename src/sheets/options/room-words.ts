import { exactLength } from "../../measure/index.js";
import type { Plan, Wish } from "../../model/index.js";
import { isMet, missWords, priceWords, wishWords } from "../../rules/index.js";
import type { Measured, Reason, SolvedWall, WishOutcome } from "../../solver/index.js";
import { acrossWords, upWords } from "../start-words.js";

/** Why a layout is told: `the best as the wishes are ranked`. */
export function reasonWords(reason: Reason, units: Plan["units"]): string {
  switch (reason.kind) {
    case "ranked":
      return "what the plan has: the best as its wishes are ranked";
    case "first":
      return `the best with \`${wishWords(reason.wish, units)}\` before all others`;
    case "without":
      return `the best without \`${wishWords(reason.wish, units)}\``;
  }
}

/** A wall's own wish is told with its wall. */
export function wishLabel(wish: Wish, units: Plan["units"]): string {
  return `${wish.wall === null ? "" : `${wish.wall}: `}${wishWords(wish, units)}`;
}

/** What becomes of a wish in the plan's own layout, and what it would take to meet it where it isn't met. */
export function outcomeWords(outcome: WishOutcome, own: Measured, { wishes, units }: Plan): string {
  const { wish, missed } = outcome;
  if (missed === 0) return "met";
  const told = missWords(wish, missed, units);
  if (isMet(outcome)) return `${told}; no layout was found with fewer`;
  return `${told}; ${priceWords(outcome, own, wishes, units)}`;
}

/** How a wall is laid in a layout of the room: the start of each lay, its joint, and the places that were free. */
export function layoutWords(
  { wall, lays }: Pick<SolvedWall, "wall" | "lays">,
  units: Plan["units"],
): string {
  if (lays.length === 0) return "not laid";
  const starts = lays.map(({ lay, across, up, joint }) => {
    const words = [
      acrossWords(across, units),
      upWords(up, units),
      `joint ${exactLength(joint, units)}`,
    ];
    return `${lays.length > 1 ? `${lay.name} ` : ""}${words.join(", ")}`;
  });
  const places = wall.openings
    .filter(({ free }) => free.x !== null || free.y !== null)
    .map(({ name, at }) => `${name} at ${exactLength(at.x, units)}, ${exactLength(at.y, units)}`);
  const stop = wall.stop ? [`tile up to ${exactLength(wall.size.up, units)}`] : [];
  return [starts.join("; "), ...places, ...stop].join(", ");
}
