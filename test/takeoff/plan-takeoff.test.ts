import assert from "node:assert/strict";
import { parse, resolve } from "../../src/language/index.js";
import { solve } from "../../src/solver/index.js";
import { takeoff } from "../../src/takeoff/index.js";
import { checkTiles } from "../support/check-tiles.js";
import { exampleNames, exampleSource, exampleText } from "../support/examples.js";
import { mutate } from "../support/mutate.js";
import { printSketch } from "../support/print-sketch.js";
import { randomFrom } from "../support/random.js";
import { ANY, randomSketch } from "../support/random-sketch.js";
import { ALONE } from "../support/solve-text.js";

function takeExample(name: string, text = exampleText(name)) {
  const solved = solve(resolve(parse(text), exampleSource(name)).plan);
  return { solved, taken: takeoff(solved) };
}

describe("the takeoff of a plan", () => {
  it("holds on every example", () => {
    for (const name of exampleNames()) {
      const { solved, taken } = takeExample(name);
      checkTiles(solved, taken, name);
      assert.deepEqual(
        taken.walls.map(({ wall }) => wall),
        solved.walls.map(({ wall }) => wall.name),
      );
    }
  });

  it("takes no more tiles for the three walls than the fewest there can be", () => {
    const [tile] = takeExample("three-walls.tileplan").taken.tiles;
    assert.equal(tile!.cut.length, tile!.cutBound);
    assert.ok(tile!.cut.some(({ pieces }) => pieces.length === 2));
  });

  it("keeps every label when the walls are written in another order", () => {
    const text = exampleText("three-walls.tileplan");
    const walls = text.split(/^(?=wall )/m);
    const turned = [walls[0], ...walls.slice(1).reverse()].join("\n");
    const labels = (written: string) =>
      takeExample("three-walls.tileplan", written)
        .taken.walls.flatMap(({ pieces }) => pieces.map(({ id, label }) => `${id} ${label}`))
        .sort();
    assert.deepEqual(labels(turned), labels(text));
    assert.ok(walls.length > 3);
  });

  it("holds on whatever is left of 100 plans that were typed wrong", () => {
    for (let seed = 0; seed < 100; seed++) {
      const random = randomFrom(seed);
      const sketch = randomSketch(seed, { ...ANY, most: 3 });
      const text = mutate(printSketch(sketch, "mm"), random);
      const solved = solve(resolve(parse(text), ALONE).plan);
      checkTiles(solved, takeoff(solved), `seed ${seed}\n${text}`);
    }
  });

  it("is of nothing, for a plan without walls or with one that can't be laid", () => {
    const take = (text: string) => takeoff(solve(resolve(parse(text), ALONE).plan));
    assert.deepEqual(take("").tiles, []);
    const bare = take('plan "p"\nunits mm\nwall w {\nsize 100 x 100\n}\n');
    assert.deepEqual(bare.walls, [{ wall: "w", mark: "W", pieces: [], batches: [], insides: [] }]);
  });
});
