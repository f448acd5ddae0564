import { DocumentState } from "../../src/service/document-state.js";
import type { OldPlan } from "../../src/service/index.js";
import { Plans, wallPlan } from "./plans.js";

const STATED = `    joint 1/16
    across tile centred on wall
    up full course from bottom
`;

/** Two walls; the second is `side`. */
export const BEFORE = twoWalls(STATED);
/** The first with another joint. */
export const AFTER = twoWalls(STATED.replace("1/16", "1/8"));

function twoWalls(lay: string): string {
  const back = wallPlan(lay);
  const side = wallPlan(STATED, "  size 36 x 47 3/16\n");
  return `${back}${side.slice(side.indexOf("wall back")).replace('back "Back', 'side "Side')}`;
}

/** A text as it was, with the stock list as it is. */
export function oldPlan(text: string): OldPlan {
  const plans = new Plans();
  return new DocumentState(plans.open(text), plans);
}
