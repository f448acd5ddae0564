import assert from "node:assert/strict";
import { run } from "../../../src/engine.js";
import { materialsOf } from "../../../src/takeoff/materials/materials.js";
import { setAreas } from "../../../src/takeoff/materials/set-areas.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { printSketch } from "../../support/print-sketch.js";
import { ANY, randomSketch } from "../../support/random-sketch.js";
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

  it("are no less than nothing, whatever the walls", () => {
    let framed = 0;
    for (let seed = 0; seed < 120; seed++) {
      const { solved } = solveText(printSketch(randomSketch(seed, ANY), "mm"));
      const { grout, sealant, mortar, membrane } = materialsOf(solved);
      for (const { volume } of [...grout, ...sealant, ...mortar]) {
        assert.ok(Number.isSafeInteger(volume) && volume >= 0, `seed ${seed}: ${volume}`);
      }
      for (const { doubleArea } of [...mortar, ...membrane]) assert.ok(doubleArea >= 0n);
      for (const wall of solved.walls) {
        const { tileJoints, trimJoints } = setAreas(wall, wall.lays[0]!);
        assert.ok(tileJoints >= 0n && trimJoints.every((joint) => joint.doubleArea >= 0n));
        framed += trimJoints.length;
      }
    }
    assert.ok(framed > 20, `${framed}`);
  });

  it("are none of walls that are not laid", () => {
    const { solved } = solveText("wall back {\n size 60 x 96\n}\n");
    assert.deepEqual(materialsOf(solved), { grout: [], sealant: [], mortar: [], membrane: [] });
  });
});
