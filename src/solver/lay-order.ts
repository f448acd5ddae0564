import type { Lay, Side, Wall } from "../model/index.js";

/**
 * The lays of a wall in an order in which each has its place before those that begin past it: panels
 * first, then those with a place of their own, those that stand on others after these, the rest of the wall last.
 */
export function inPlacingOrder(lays: readonly Lay[]): readonly Lay[] {
  const placed: Lay[] = [];
  const waiting = [...lays].sort((a, b) => rankOf(a, lays) - rankOf(b, lays));
  while (waiting.length > 0) {
    const next = waiting.findIndex((lay) => standsOn(lay).every((name) => isPlaced(name)));
    // Lays that wait for each other are told where the plan is read; here they just come last.
    placed.push(...waiting.splice(Math.max(next, 0), 1));
  }
  return placed;

  function isPlaced(name: string): boolean {
    return !waiting.some((lay) => lay.name === name);
  }
}

/** The names of the lays that have to have their places before this one. */
function standsOn({ area, goesOnFrom }: Lay): string[] {
  const bounds = Object.values(area?.bounds ?? {});
  const names = bounds.flatMap((bound) => (bound.kind === "lay" ? [bound.lay] : []));
  return goesOnFrom === null ? names : [...names, goesOnFrom];
}

function rankOf(lay: Lay, lays: readonly Lay[]): number {
  if (isPanel(lay, lays)) return 0;
  if (lay.area === null || lay.area.rest) return 3;
  return Object.values(lay.area.bounds).some(({ kind }) => kind === "lay") ? 2 : 1;
}

/** A lay's place in the numbering of courses. */
export interface Numbered {
  readonly lay: Lay;
  /** The lay it stands on, whose courses are counted on; null where it begins at 1. */
  readonly on: Lay | null;
  /** What its pieces' ids begin with: the wall, and the lay that the counting begins with unless that is the wall's main one. */
  readonly idPrefix: string;
}

/**
 * The lays of a wall from the bottom up, as they stand on each other, the main one first: that is the
 * one that the plan states first, of those that are no panel. Courses are counted on from a lay to
 * the one on it.
 */
export function inCourseOrder(wall: Wall): readonly Numbered[] {
  const under = new Map(wall.lays.map((lay) => [lay, layUnder(lay, wall.lays)]));
  const rootOf = (lay: Lay): Lay => {
    let root = lay;
    for (let next = under.get(root); next; next = under.get(root)) root = next;
    return root;
  };
  const main = wall.lays.find((lay) => !isPanel(lay, wall.lays)) ?? wall.lays[0];
  const roots = [...new Set(wall.lays.map(rootOf))].sort(
    (a, b) => Number(b === rootOf(main!)) - Number(a === rootOf(main!)),
  );
  return roots.flatMap((root) => {
    const idPrefix = root === rootOf(main!) ? wall.name : `${wall.name}/${root.name}`;
    return wall.lays
      .filter((lay) => rootOf(lay) === root)
      .sort((a, b) => depthOf(a) - depthOf(b))
      .map((lay) => ({ lay, on: under.get(lay) ?? null, idPrefix }));
  });

  function depthOf(lay: Lay): number {
    let depth = 0;
    for (let next = under.get(lay); next; next = under.get(next)) depth++;
    return depth;
  }
}

function layUnder(lay: Lay, lays: readonly Lay[]): Lay | null {
  const under = layNamedUnder(lay, lays);
  // Lays that stand on each other are told where the plan is read; here each is counted by itself.
  let next = under;
  for (let depth = 0; next && depth < lays.length; depth++) {
    if (next === lay) return null;
    next = layNamedUnder(next, lays);
  }
  return under;
}

function layNamedUnder({ area }: Lay, lays: readonly Lay[]): Lay | null {
  const bound = area?.bounds.bottom;
  if (bound?.kind !== "lay") return null;
  return lays.find(({ name }) => name === bound.lay) ?? null;
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** A lay with four bounds of its own, or what is over the set courses of one. */
function isPanel(lay: Lay, lays: readonly Lay[]): boolean {
  if (SIDES.every((side) => lay.area?.bounds[side]?.kind === "place")) return true;
  const under = lays.find((other) => goesStraightOn(lay, other));
  return under !== undefined && isPanel(under, lays);
}

/** Whether a lay is what stands over the set courses of the same lay: no other lay is between them. */
export function goesStraightOn({ area, goesOnFrom }: Lay, other: Lay): boolean {
  const bottom = area?.bounds.bottom;
  return (
    other.set !== null &&
    goesOnFrom === other.name &&
    bottom?.kind === "lay" &&
    bottom.lay === other.name
  );
}
