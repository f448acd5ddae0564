import { plainText } from "../../drawing/index.js";
import type { Diagnostic } from "../../model/index.js";
import type { SolvedPlan } from "../../solver/index.js";
import type { Takeoff } from "../../takeoff/index.js";
import { groundOf } from "./ground.js";
import { pageIds } from "./page-ids.js";
import type { Page, Paper } from "./paper.js";
import { planPage } from "./plan-page.js";
import { polePage } from "./pole-page.js";
import { shoppingPage } from "./shopping-page.js";
import { wallPage } from "./wall-page.js";

/** What the host knows of a plan besides its text. */
export interface PaperFacts {
  /** Such as a commit or a date; null when the host doesn't know. */
  readonly revision: string | null;
}

/**
 * The setter's sheet of a plan: a page for the whole of it, one a wall, the shopping list, and the
 * story poles of each wall. The same plan, findings and facts make the same paper.
 */
export function paperOf(
  solved: SolvedPlan,
  diagnostics: readonly Diagnostic[],
  takeoff: Takeoff,
  { revision }: PaperFacts,
): Paper {
  const ground = groundOf(solved, diagnostics, takeoff, revision);
  const named: { readonly name: string; readonly page: Omit<Page, "id"> }[] = [
    { name: "plan", page: planPage(ground) },
    ...solved.walls.map((wall, i) => ({
      name: `wall-${wall.wall.name}`,
      page: wallPage(ground, wall, takeoff.walls[i]!),
    })),
    { name: "shopping-list", page: shoppingPage(ground) },
    ...solved.walls.flatMap((wall) => {
      const page = polePage(ground, wall);
      return page ? [{ name: `poles-${wall.wall.name}`, page }] : [];
    }),
  ];
  const ids = pageIds(named.map(({ name }) => name));
  return {
    title: plainText(solved.plan.title) || "Tile plan",
    revision,
    pages: named.map(({ page }, i) => ({ id: ids[i]!, ...page })),
  };
}
