import { buildOverlay, type ComparedWall, type Fate, type OverlayScene } from "../drawing/index.js";
import { compare } from "./compare.js";
import type { ComparedPlan } from "./comparison.js";
import type { SolvedLay } from "../solver/index.js";
import { FATE, matchPieces, type PieceMatch } from "./match-pieces.js";
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
        before: fatesOf(matches, "before"),
        after: fatesOf(matches, "after"),
      },
      notes: wallNotes(told[i]!, units),
    };
  });
  const changed = all.filter((_, i) => wallChanged(told[i]!));
  return buildOverlay(after.solved.plan, changed.length > 0 ? changed : all);
}

/** Each lay with the fates of its pieces, as all matches that tell of some of its courses say. */
function fatesOf(
  matches: readonly PieceMatch[],
  when: "before" | "after",
): ReadonlyMap<SolvedLay, (Fate | null)[]> {
  const byLay = new Map<SolvedLay, Uint8Array>();
  for (const { lays, fates } of matches) {
    const lay = lays[when];
    if (!lay) continue;
    const known = byLay.get(lay);
    const told = fates[when];
    byLay.set(
      lay,
      known ? known.map((fate, i) => (fate === FATE.elsewhere ? told[i]! : fate)) : told,
    );
  }
  const apart = when === "before" ? "gone" : "fresh";
  return new Map([...byLay].map(([lay, fates]) => [lay, named(fates, apart)]));
}

function named(fates: Uint8Array, apart: Fate): (Fate | null)[] {
  const names: (Fate | null)[] = [];
  names[FATE.kept] = null;
  names[FATE.moved] = "moved";
  names[FATE.recut] = "recut";
  names[FATE.apart] = apart;
  return Array.from(fates, (fate) => names[fate]!);
}
