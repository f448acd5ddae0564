import type { Comparison, WallComparison } from "./comparison.js";

/** How many pieces met each fate. */
export interface Totals {
  readonly kept: number;
  readonly moved: number;
  readonly recut: number;
  readonly fresh: number;
  readonly gone: number;
}

export function wallTotals({ pieces }: WallComparison): Totals {
  const sum = (groups: readonly { readonly count: number }[]) =>
    groups.reduce((total, { count }) => total + count, 0);
  return {
    kept: pieces.kept,
    moved: sum(pieces.moved),
    recut: sum(pieces.recut),
    fresh: sum(pieces.fresh),
    gone: sum(pieces.gone),
  };
}

export function totalsOf({ walls }: Comparison): Totals {
  return walls.map(wallTotals).reduce(
    (a, b) => ({
      kept: a.kept + b.kept,
      moved: a.moved + b.moved,
      recut: a.recut + b.recut,
      fresh: a.fresh + b.fresh,
      gone: a.gone + b.gone,
    }),
    { kept: 0, moved: 0, recut: 0, fresh: 0, gone: 0 },
  );
}

/** Whether anything of a wall differs. */
export function wallChanged(wall: WallComparison): boolean {
  const { moved, recut, fresh, gone } = wallTotals(wall);
  return (
    wall.name.before !== wall.name.after ||
    wall.title.before !== wall.title.after ||
    wall.parts.length + wall.facts.length + wall.alignments.length > 0 ||
    moved + recut + fresh + gone > 0 ||
    JSON.stringify(wall.reading.before) !== JSON.stringify(wall.reading.after)
  );
}

/**
 * Whether nothing differs between two plans but their text. What is bought follows from all the rest,
 * so that it needn't be asked for.
 */
export function isEmpty(comparison: Comparison): boolean {
  const { parts, facts, findings, walls } = comparison;
  return parts.length + facts.length + findings.length === 0 && !walls.some(wallChanged);
}

/** Findings that make a plan worse: errors and warnings that are new, or no longer waived. */
export function newFindings({ findings }: Comparison): number {
  return findings.filter(({ before, after }) => {
    if (!after || after.allowed !== undefined || after.severity === "information") return false;
    return !before || before.allowed !== undefined || before.severity === "information";
  }).length;
}

/** How many courses are set and would be cut differently now, though they are on the wall. */
export function setCoursesAgainst({ walls }: Comparison): number {
  return walls.reduce(
    (sum, { onWall }) => sum + onWall.before.reduce((all, { courses }) => all + courses.length, 0),
    0,
  );
}

/** Whether more tiles of any kind are needed than before. */
export function needsMoreTiles({ quantities }: Comparison): boolean {
  return quantities.some((each) => each.kind === "tile" && each.pieces.after > each.pieces.before);
}
