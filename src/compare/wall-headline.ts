import { counted } from "../measure/index.js";
import type { Diagnostic } from "../model/index.js";
import type { Comparison, FindingChange, WallComparison } from "./comparison.js";
import { wallChanged, wallTotals } from "./totals.js";

/**
 * The weightiest of what changed on a wall in one line, such as for a lens: `12 cuts changed, 1 sliver
 * new`. null where nothing did.
 */
export function wallHeadline(wall: WallComparison, { findings }: Comparison): string | null {
  const { before, after } = wall.name;
  const come = findings.filter((each) => isOn(each.after, after) && !isHeld(each.before));
  const went = findings.filter((each) => isOn(each.before, before) && !isHeld(each.after));
  const told = [
    ...findingWords(come.map((each) => each.after!)).map((words) => `${words} new`),
    ...findingWords(went.map((each) => each.before!)).map((words) => `${words} gone`),
  ];
  if (!wallChanged(wall) && told.length === 0) return null;
  const parts = [...pieceWords(wall), ...told];
  return parts.length > 0 ? parts.join(", ") : "changed, no cut among it";
}

function pieceWords(wall: WallComparison): string[] {
  if (wall.name.before === null) return ["new wall"];
  if (wall.name.after === null) return ["gone"];
  if (wall.anew) return ["laid anew"];
  const { recut, fresh, gone, moved } = wallTotals(wall);
  const parts = [
    ...(recut > 0 ? [`${counted(recut, "cut")} changed`] : []),
    ...(fresh > 0 ? [`${counted(fresh, "piece")} new`] : []),
    ...(gone > 0 ? [`${counted(gone, "piece")} gone`] : []),
  ];
  return parts.length === 0 && moved > 0 ? [`${counted(moved, "piece")} moved`] : parts;
}

const SLIVER = "cut/sliver";

/** Slivers piece by piece and by their name, since a setter looks for them first. */
function findingWords(found: readonly Diagnostic[]): string[] {
  const slivers = found
    .filter(({ code }) => code === SLIVER)
    .reduce((sum, { pieces }) => sum + Math.max(1, pieces?.length ?? 0), 0);
  const others = found.filter(({ code }) => code !== SLIVER).length;
  return [
    ...(slivers > 0 ? [counted(slivers, "sliver")] : []),
    ...(others > 0 ? [counted(others, "finding")] : []),
  ];
}

function isOn(found: FindingChange["after"], wall: string | null): boolean {
  return isHeld(found) && wall !== null && found?.wall === wall;
}

/** Allowed findings and notes make no wall better or worse. */
function isHeld(found: FindingChange["after"]): boolean {
  return found !== null && found.allowed === undefined && found.severity !== "information";
}
