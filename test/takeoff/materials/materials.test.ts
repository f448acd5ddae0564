import assert from "node:assert/strict";
import { run } from "../../../src/engine.js";
import { materialsOf } from "../../../src/takeoff/materials/materials.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { solveText } from "../../support/solve-text.js";

describe("the materials of a plan", () => {
  it("are told wall by wall", () => {
    const name = "three-walls.tileplan";
    const { plan, solved } = run(exampleText(name), exampleSource(name));
    const { grout, sealant, mortar, membrane } = materialsOf(solved);
    const walls = plan.walls.map((wall) => wall.name);
    for (const parts of [grout, mortar, membrane]) {
      assert.deepEqual(
        parts.map(({ wall }) => wall),
        walls,
      );
    }
    assert.deepEqual([...new Set(sealant.map(({ wall }) => wall))], walls);
    for (const [i, { doubleArea }] of mortar.entries()) {
      assert.ok(doubleArea < membrane[i]!.doubleArea + membrane[i]!.doubleArea / 50n);
    }
  });

  it("are none of walls that are not laid", () => {
    const { solved } = solveText("wall back {\n size 60 x 96\n}\n");
    assert.deepEqual(materialsOf(solved), { grout: [], sealant: [], mortar: [], membrane: [] });
  });
});
