import assert from "node:assert/strict";
import type { SolvedLay, SolvedWall } from "../../src/solver/index.js";
import type { CutPiece } from "../../src/takeoff/index.js";
import { freeWall, type FreeWall } from "./free-wall.js";
import { firstWall } from "./solve-text.js";
import { takeText, type TakenText } from "./takeoff-text.js";

/** Whole nanometres of whole or half millimetres. */
export const mm = (length: number): number => length * 1_000_000;

export interface CutWall extends TakenText {
  readonly wall: SolvedWall;
  readonly laid: SolvedLay;
  /** The cut piece with this label; fails when there is none. */
  readonly piece: (label: string) => CutPiece;
}

/**
 * A wall in millimetres that is tiled with 100 x 50 tiles 2 apart from its lower left corner, sides
 * held off by nothing, unless `parts` say otherwise. Its mark is B.
 */
export function cutWall(
  parts: Partial<FreeWall> & Pick<FreeWall, "size">,
  stock: { readonly tile?: readonly string[]; readonly plan?: readonly string[] } = {},
): CutWall {
  const stated = parts.wall ?? [];
  const sealed = SIDES.filter((side) => !stated.some((line) => line.startsWith(side)));
  const text = freeWall({
    units: "mm",
    face: "100 x 50",
    joint: "2",
    across: "full tile from left",
    up: "full course from bottom",
    ...parts,
    wall: [...sealed.map((side) => `${side} wall movement 0`), ...stated],
  }).replace(
    "tile field {",
    [...(stock.plan ?? []), "tile field {", ...(stock.tile ?? [])].join("\n"),
  );
  const taken = takeText(text);
  return {
    ...taken,
    ...firstWall(taken),
    piece: (label) => {
      const found = taken.taken.walls[0]?.pieces.find((piece) => piece.label === label);
      assert.ok(found, `${label} is cut`);
      return found;
    },
  };
}

const SIDES = ["left", "right", "bottom", "top"];
