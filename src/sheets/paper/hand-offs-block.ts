import type { CutTile, PlacedPiece, WallCuts } from "../../takeoff/index.js";
import { NONE, tableOfSome } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block } from "./paper.js";

/** The tiles that give more than one piece: what to keep when the first piece is cut. */
export function handOffBlocks(ground: Ground, cuts: WallCuts): Block[] {
  const mine = new Set(cuts.pieces.map((piece) => piece.label));
  const shared = ground.takeoff.tiles
    .flatMap(({ cut }) => cut)
    .filter(({ pieces }) => pieces.length > 1 && pieces.some(({ label }) => mine.has(label)));
  const rows = new Map<string, string[]>();
  for (const tile of shared) {
    const left = offcutWords(tile, ground);
    const row = rows.get(left) ?? [];
    rows.set(left, row);
    row.push(tile.pieces.map(pieceWords).join(" + "));
  }
  return tableOfSome(
    "Offcuts to keep: pieces that come from one tile",
    ["From one tile each", "Left over of each"],
    [...rows].map(([left, tiles]) => [tiles.join("; "), left]),
  );
}

function pieceWords({ label, turns }: PlacedPiece): string {
  if (turns === 0) return label;
  return `${label} (turned ${turns === 2 ? "end for end" : "a quarter"})`;
}

function offcutWords({ offcuts }: CutTile, { length }: Ground): string {
  const sizes = offcuts.map(
    ({ left, bottom, right, top }) => `${length(right - left)} x ${length(top - bottom)}`,
  );
  return sizes.join(", ") || NONE;
}
