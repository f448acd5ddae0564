import assert from "node:assert/strict";
import type { Side } from "../../src/model/index.js";
import type { CutPiece } from "../../src/takeoff/index.js";
import { ANY, randomSketch, SQUARE } from "../support/random-sketch.js";
import { randomFrom } from "../support/random.js";
import { stockedText, takeText, type TakenText } from "../support/takeoff-text.js";
import { type EndKind, loadMostPairs, type MostPairs } from "./end-cuts-highs.js";

const WALLS = 1000;

const CROSSCUTS = { across: ["bottom", "top"], ends: ["left", "right"] } as const;
const RIPS = { across: ["left", "right"], ends: ["bottom", "top"] } as const;

describe(`the end cuts of ${WALLS} random walls, against an integer program`, () => {
  it("take as few tiles as they can", async () => {
    const mostPairs = await loadMostPairs();
    let shared = 0;
    for (let seed = 0; seed < WALLS; seed++) {
      const { taken, text } = takeRandom(seed);
      for (const direction of [CROSSCUTS, RIPS]) {
        const ends = taken.walls
          .flatMap(({ pieces }) => pieces)
          .filter((piece) => endOf(piece, direction) !== null);
        const labels = new Set(ends.map(({ label }) => label));
        const tiles = taken.tiles
          .flatMap(({ cut }) => cut)
          .filter(({ pieces }) => pieces.some(({ label }) => labels.has(label)));
        const most = pairsOf(ends, direction, taken.saw.kerf, mostPairs);
        assert.equal(tiles.length, ends.length - most, `seed ${seed}\n${text}`);
        shared += most;
      }
    }
    assert.ok(shared > 3 * WALLS, `${shared} tiles shared`);
  }).timeout(600_000);
});

function takeRandom(seed: number): TakenText & { readonly text: string } {
  const random = randomFrom(seed + 10_000);
  const tile = random.chance(0.4) ? ["directional"] : [];
  const plan = random.chance(0.5) ? [`saw { kerf ${random.integer(0, 60) / 10}mm }`] : [];
  const sketch = randomSketch(seed + 10_000, { ...(random.chance(0.5) ? ANY : SQUARE), most: 6 });
  // No tile is square: there rips and crosscuts share tiles, and have no answers of their own.
  const up = sketch.tile.up === sketch.tile.across ? sketch.tile.up + 2 * 793_750 : sketch.tile.up;
  const text = stockedText({ ...sketch, tile: { ...sketch.tile, up } }, { tile, plan });
  return { ...takeText(text), text };
}

/** The end that a piece needs, of those that span the tile; null for any other piece. */
function endOf(
  { factory, tile, cut: { box } }: CutPiece,
  { across, ends }: typeof CROSSCUTS | typeof RIPS,
): Side | null {
  const isWhole =
    box.right - box.left === tile.face.across && box.top - box.bottom === tile.face.up;
  if (isWhole || !across.every((side) => factory.includes(side))) return null;
  return ends.find((side) => factory.includes(side)) ?? null;
}

function pairsOf(
  pieces: readonly CutPiece[],
  direction: typeof CROSSCUTS | typeof RIPS,
  kerf: number,
  mostPairs: MostPairs,
): number {
  const [first] = pieces;
  if (!first) return 0;
  const { face, directional } = first.tile;
  const length = direction === CROSSCUTS ? face.across : face.up;
  const kinds = new Map<string, EndKind>();
  for (const piece of pieces) {
    const { left, bottom, right, top } = piece.cut.box;
    const size = direction === CROSSCUTS ? right - left : top - bottom;
    const side = endOf(piece, direction)!;
    const key = `${size} ${side}`;
    kinds.set(key, { size, side, count: (kinds.get(key)?.count ?? 0) + 1 });
  }
  return mostPairs(
    [...kinds.values()],
    (a, b) => a.size + b.size + kerf <= length && (!directional || a.side !== b.side),
  );
}
