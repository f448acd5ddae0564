import { buildOverlay, type ComparedWall, type Fate, type OverlayScene } from "../drawing/index.js";
import { compare } from "./compare.js";
import type { ComparedPlan } from "./comparison.js";
import { FATE, matchPieces } from "./match-pieces.js";
import { matchPlans } from "./match-plan.js";
import { wallNotes } from "./summary.js";
import { wallChanged } from "./totals.js";

/** Both plans in one picture: every wall that changed, or all where none did. */
export function overlayOf(before: ComparedPlan, after: ComparedPlan): OverlayScene {
  const { walls } = matchPlans(before.solved, after.solved);
  const { walls: told } = compare(before, after);
  const units = after.solved.plan.units;
  const all = walls.map((wall, i): ComparedWall => {
    const matches = matchPieces(wall);
    return {
      ...wall,
      fates: {
        before: new Map(
          matches.flatMap(({ lays, fates }) =>
            lays.before ? [[lays.before, named(fates.before, "gone")] as const] : [],
          ),
        ),
        after: new Map(
          matches.flatMap(({ lays, fates }) =>
            lays.after ? [[lays.after, named(fates.after, "fresh")] as const] : [],
          ),
        ),
      },
      notes: wallNotes(told[i]!, units),
    };
  });
  const changed = all.filter((_, i) => wallChanged(told[i]!));
  return buildOverlay(after.solved.plan, changed.length > 0 ? changed : all);
}

function named(fates: Uint8Array, apart: Fate): (Fate | null)[] {
  const names: (Fate | null)[] = [];
  names[FATE.kept] = null;
  names[FATE.moved] = "moved";
  names[FATE.recut] = "recut";
  names[FATE.apart] = apart;
  return Array.from(fates, (fate) => names[fate]!);
}
