import assert from "node:assert/strict";
import { checkTiles } from "../support/check-tiles.js";
import { ANY, randomSketch, SQUARE } from "../support/random-sketch.js";
import { randomFrom } from "../support/random.js";
import { stockedText, takeText, type TakenText } from "../support/takeoff-text.js";

const WALLS = 300;

describe(`the tiles that ${WALLS} random plans take`, () => {
  it("hold every piece once, apart by the kerf, with its factory edges on the tile's, and add up", () => {
    const seen = { cut: 0, shared: 0, bound: 0 };
    for (const { solved, taken, told } of takenPlans()) {
      checkTiles(solved, taken, told);
      for (const { cut, cutBound } of taken.tiles) {
        seen.cut += cut.length;
        seen.shared += cut.filter(({ pieces }) => pieces.length > 1).length;
        seen.bound += cutBound;
      }
    }
    assert.ok(seen.shared > seen.cut / 3, JSON.stringify(seen));
    // These walls are small and full of openings; on a plain one both are the same.
    assert.ok(seen.cut < 1.05 * seen.bound, JSON.stringify(seen));
  });
});

function* takenPlans(): Generator<TakenText & { readonly told: string }> {
  for (let seed = 0; seed < WALLS; seed++) {
    const random = randomFrom(seed);
    const tile = random.chance(0.3) ? ["directional"] : [];
    const plan = random.chance(0.5) ? [`saw { kerf ${random.integer(0, 40) / 10}mm }`] : [];
    const sketch = randomSketch(seed, random.chance(0.5) ? ANY : SQUARE);
    const square = random.chance(0.2) ? { ...sketch.tile, up: sketch.tile.across } : sketch.tile;
    const text = stockedText({ ...sketch, tile: square }, { tile, plan });
    yield { ...takeText(text), told: `seed ${seed}\n${text}` };
  }
}
