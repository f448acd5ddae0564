import { wallHeadline } from "../compare/index.js";
import { blocksOf } from "./blocks.js";
import { type Compared, isWhole } from "./compared.js";
import type { ChangeLens, OldPlan } from "./comparison.js";
import type { DocumentState } from "./document-state.js";

/**
 * A lens over each wall that changed; none while the text, or the one before, can't be understood
 * whole: what is missing then isn't gone.
 */
export function changeLenses(state: DocumentState, old: OldPlan, compared: Compared): ChangeLens[] {
  const { outcome } = state;
  if (!isWhole(outcome) || !isWhole(old.outcome)) return [];
  const comparison = compared.of(old.outcome, outcome);
  const headlines = new Map(
    comparison.walls.map((wall) => [wall.name.after, wallHeadline(wall, comparison)]),
  );
  return blocksOf(state).flatMap(({ kind, name, place }) => {
    const text = kind === "wall" ? headlines.get(name) : null;
    return text ? [{ wall: name, range: place.range, text }] : [];
  });
}
