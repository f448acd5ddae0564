import { formatLength, type Unit } from "../measure/index.js";
import { softPlace } from "../rules/index.js";
import { softJoints, type SoftRun, type SolvedWall } from "../solver/index.js";
import type { Fact, Pair } from "./comparison.js";
import { factOf, words } from "./facts-of.js";

/**
 * The soft joints in a wall's tile that came, went or moved: what is said alike before and after is the same one,
 * and of those left over the first upright (level) one before is the first after. `renamed` gives tiles' new names.
 */
export function softFacts(
  { before, after }: Pair<SolvedWall>,
  units: Unit,
  renamed: ReadonlyMap<string, string>,
): Fact[] {
  const told = (wall: SolvedWall, way: SoftRun["way"]): string[] => {
    const all = softJoints(wall).runs.filter((run) => run.way === way);
    return [...new Set(all.map((run) => runWords(run, units)))];
  };
  return (["level", "upright"] as const).flatMap((way) => {
    const old = told(before, way).map((each) => renamedWords(each, renamed));
    const now = told(after, way);
    const gone = old.filter((each) => !now.includes(each));
    const come = now.filter((each) => !old.includes(each));
    return Array.from({ length: Math.max(gone.length, come.length) }, (_, i) => [
      words(gone[i] ?? null),
      words(come[i] ?? null),
    ]).flatMap(([was, is]) => factOf({ of: "wall" }, "soft joint", was!, is!));
  });
}

/** A joint between lays has a width of its own. */
function runWords({ name, from, to }: SoftRun, units: Unit): string {
  const place = softPlace(name, units);
  return name.kind === "between" ? `${place}, ${formatLength(to - from, units)}` : place;
}

function renamedWords(said: string, renamed: ReadonlyMap<string, string>): string {
  return said
    .split(/\b/)
    .map((each) => renamed.get(each) ?? each)
    .join("");
}
