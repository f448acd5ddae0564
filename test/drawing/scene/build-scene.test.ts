import assert from "node:assert/strict";
import fc from "fast-check";
import { run } from "../../../src/engine.js";
import { exampleNames, exampleSource, exampleText } from "../../support/examples.js";
import { printSketch } from "../../support/print-sketch.js";
import { ANY, randomSketch } from "../../support/random-sketch.js";
import { ALONE } from "../../support/solve-text.js";
import { checkScene } from "../support/check-scene.js";
import { planOf, sceneOf, wallText } from "../support/scene-of.js";

const LAID =
  "    bond stack\n    joint 1/8\n    across full tile from left\n    up full course from bottom";

describe("the scene of a plan", () => {
  for (const name of exampleNames()) {
    it(`has no text over another and none clipped: ${name}`, () => {
      checkScene(run(exampleText(name), exampleSource(name)).scene(), name);
    });
  }

  it("has no text over another in three hundred random plans", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const text = printSketch(randomSketch(seed, ANY), seed % 2 === 0 ? "inch" : "mm");
        checkScene(run(text, ALONE).scene(), `seed ${seed}`);
      }),
      { numRuns: 300, seed: 20_240_301 },
    );
  });

  it("has no text over another whatever the titles", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (raw) => {
        const title = raw.replace(/["\\\r\n]/g, "");
        const text = planOf(wallText()).replace("Test plan", title).replace("Back wall", title);
        checkScene(sceneOf(text), JSON.stringify(title));
      }),
      { numRuns: 100, seed: 7 },
    );
  });

  it("holds crowded walls: many niches, many holes, long names", () => {
    const niches = Array.from(
      { length: 9 },
      (_, i) =>
        `  niche a-very-long-name-for-a-small-niche-${i} {\n    at ${1 + 4 * i}, ${2 + 3 * (i % 4)}\n    size 2 x 2\n  }`,
    );
    const holes = Array.from(
      { length: 12 },
      (_, i) => `  hole h${i} at ${2 + 3 * i}, ${18 + (i % 3)} across 1`,
    );
    checkScene(sceneOf(planOf(wallText([...niches, ...holes].join("\n")))), "crowded");
  });

  it("holds walls of very unlike sizes", () => {
    const walls = ["2 x 2", "400 x 10", "3 x 120", "60 x 96"].map((size, i) =>
      wallText("  window w {\n    at 1/2, 1/2\n    size 1 x 1\n  }", `w${i}`).replace(
        "40 x 30",
        size,
      ),
    );
    checkScene(sceneOf(planOf(walls.join("\n"))), "unlike");
  });

  it("holds small walls of which low courses are set, alone and beside a tall one", () => {
    const small = (face: string, size: string) =>
      planOf(wallText("", "small", `${LAID}\n    set courses 1 to 1`))
        .replace("6in x 3in", face)
        .replace("40 x 30", size);
    for (const face of ["6in x 3in", "3in x 1in", "1/2in x 1/2in"]) {
      for (const size of ["12 x 6", "4 x 4"]) {
        const text = small(face, size);
        checkScene(sceneOf(text), `${face} on ${size}`);
        const tall = wallText("", "tall").replace("40 x 30", "120 x 96");
        checkScene(sceneOf(`${text}${tall}`), `${face} on ${size} beside a tall wall`);
      }
    }
  });

  it("holds a plan without a wall, and an empty one", () => {
    checkScene(sceneOf('plan "Nothing yet"\n'), "no wall");
    checkScene(sceneOf(""), "empty");
    assert.equal(sceneOf("").title, "Tile plan");
  });

  it("says what a wall asks for when it is refused", () => {
    const scene = sceneOf(planOf(wallText().replace("40 x 30", "20000 x 20000")));
    checkScene(scene, "refused");
    assert.ok(scene.walls[0]!.labels.some(({ text }) => text.startsWith("Not laid")));
  });

  it("is plain data: it survives JSON unchanged", () => {
    const scene = sceneOf(planOf(wallText("  window w {\n    at 9, 9\n    size 9 x 9\n  }")));
    assert.deepEqual(JSON.parse(JSON.stringify(scene)), scene);
  });

  it("puts walls side by side on one level line", () => {
    const scene = sceneOf(planOf([wallText(), wallText("", "other")].join("\n")));
    const [first, second] = scene.walls;
    assert.equal(first!.at.y, second!.at.y);
    assert.ok(second!.at.x > first!.at.x + 40 * 25.4);
  });

  it("tells a wall from its own corner, so that another wall's change leaves it", () => {
    const wider = wallText("", "other").replace("40 x 30", "41 x 30");
    const before = sceneOf(planOf([wallText(), wallText("", "other")].join("\n")));
    const after = sceneOf(planOf([wallText(), wider].join("\n")));
    assert.notDeepEqual(after.walls[1], before.walls[1]);
    assert.deepEqual({ ...after.walls[0], at: null }, { ...before.walls[0], at: null });
  });
});
