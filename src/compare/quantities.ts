import type { Tile, Trim } from "../model/index.js";
import type { SolvedPlan } from "../solver/index.js";
import type { Change, Quantity } from "./comparison.js";

/** How many tiles of one name are begun on all walls. Offcuts are not counted as tiles to use. */
export function tilesOf({ walls }: SolvedPlan, name: string): number {
  let tiles = 0;
  for (const { pieces, lay } of walls.flatMap((wall) => wall.lays)) {
    if (lay.tile.name !== name) continue;
    for (let i = 0; i < pieces.count; i++) if (pieces.part[i] === 0) tiles++;
  }
  return tiles;
}

/** How many lengths of a trim are begun on all walls: each piece is cut from one. */
export function trimsOf({ walls }: SolvedPlan, name: string): number {
  return walls
    .flatMap((wall) => wall.trims)
    .filter(({ along }) => {
      if ("opening" in along) return along.opening.frame?.trim.name === name;
      const { meets } = along.edge;
      return meets.kind === "free" && meets.trim?.name === name;
    })
    .reduce((sum, run) => sum + run.pieces.length, 0);
}

/** What is set of each tile and trim, before and after. */
export function quantitiesOf(
  before: SolvedPlan,
  after: SolvedPlan,
  tiles: readonly Change<Tile>[],
  trims: readonly Change<Trim>[],
): Quantity[] {
  return [
    ...tiles.map(({ before: old, after: now }): Quantity => {
      const pieces = {
        before: old ? tilesOf(before, old.name) : 0,
        after: now ? tilesOf(after, now.name) : 0,
      };
      const boxes = { before: boxesFor(pieces.before, old), after: boxesFor(pieces.after, now) };
      return { kind: "tile", name: namesOf(old, now), pieces, boxes };
    }),
    ...trims.map(({ before: old, after: now }): Quantity => {
      const pieces = {
        before: old ? trimsOf(before, old.name) : 0,
        after: now ? trimsOf(after, now.name) : 0,
      };
      return {
        kind: "trim",
        name: namesOf(old, now),
        pieces,
        boxes: { before: null, after: null },
      };
    }),
  ];
}

function boxesFor(tiles: number, tile: Tile | null): number | null {
  return tile?.box ? Math.ceil(tiles / tile.box) : null;
}

function namesOf(before: Tile | Trim | null, after: Tile | Trim | null): Change<string> {
  return { before: before?.name ?? null, after: after?.name ?? null };
}
