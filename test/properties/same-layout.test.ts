import assert from "node:assert/strict";
import { layoutData, wallData } from "../support/layout-data.js";
import { printSketch, sketchBlocks } from "../support/print-sketch.js";
import { ANY, GRID, randomSketch } from "../support/random-sketch.js";
import type { Sketch } from "../support/sketch.js";
import { solveClean } from "../support/solve-text.js";
import { leftToSolver, renamed, writtenDown } from "../support/turn-sketch.js";

const PLANS = 60;

describe(`the layouts of ${PLANS} random plans`, () => {
  it("are the same when solved again", () => {
    eachSketch((sketch, told) => {
      const text = printSketch(sketch, "mm");
      assert.deepEqual(layout(text), layout(text), told);
    });
  });

  it("are the same nanometres in millimetres and in inches", () => {
    eachSketch((sketch, told) => {
      assert.deepEqual(
        layout(printSketch(sketch, "inch")),
        layout(printSketch(sketch, "mm")),
        told,
      );
    });
  });

  it("are the same under other names", () => {
    eachSketch((sketch, told) => {
      const [here, there] = [sketch, renamed(sketch)].map((each) =>
        layout(printSketch(each, "mm")),
      );
      assert.deepEqual(there, here, told);
    });
  });

  it("are the same wherever tiles, trims and walls are declared", () => {
    eachSketch((sketch, told) => {
      const blocks = sketchBlocks(sketch, "mm");
      const backwards = [...blocks.slice(0, 3), ...blocks.slice(3).reverse()].join("\n");
      const answer = solveClean(`${backwards}\n`).solved.walls;
      const byName = new Map(answer.map((wall) => [wall.wall.name, wallData(wall)]));
      const expected = solveClean(printSketch(sketch, "mm")).solved.walls;
      assert.equal(byName.size, expected.length);
      for (const wall of expected)
        assert.deepEqual(byName.get(wall.wall.name), wallData(wall), told);
    });
  });

  it("are the same in whatever order a wall's openings, holes and sides are declared", () => {
    eachSketch((sketch, told) => {
      const turned = {
        ...sketch,
        walls: sketch.walls.map((wall) => ({
          ...wall,
          sides: Object.fromEntries(Object.entries(wall.sides).reverse()) as typeof wall.sides,
          openings: [...wall.openings].reverse(),
          holes: [...wall.holes].reverse(),
        })),
      };
      const [here, there] = [sketch, turned].map((each) => unordered(printSketch(each, "mm")));
      assert.deepEqual(there, here, told);
    });
  });

  it("chosen by the solver and written down, are the same when solved again", () => {
    eachSketch((sketch, told, seed) => {
      const range = seed % 4 === 0 ? { min: 2 * GRID, max: 4 * GRID } : null;
      const open = leftToSolver(sketch, range);
      const { solved } = solveClean(printSketch(open, "mm"));
      const again = solveClean(printSketch(writtenDown(open, solved), "mm")).solved;
      assert.deepEqual(layoutData(again), layoutData(solved), told);
    }, PLANS / 2);
  });
});

function eachSketch(
  test: (sketch: Sketch, told: string, seed: number) => void,
  plans = PLANS,
): void {
  for (let seed = 0; seed < plans; seed++) {
    const sketch = randomSketch(seed, { ...ANY, most: 6 });
    test(sketch, `seed ${seed}\n${printSketch(sketch, "mm")}`, seed);
  }
}

function layout(text: string): unknown {
  return layoutData(solveClean(text).solved);
}

/** The layout with takeaways and trims in an order that doesn't come from the text. */
function unordered(text: string): unknown {
  return solveClean(text).solved.walls.map((wall) => {
    const { takeaways, trims, ...rest } = wallData(wall) as Record<string, unknown>;
    const sorted = [takeaways, trims].map((list) =>
      (list as unknown[]).map((item) => JSON.stringify(item)).sort(),
    );
    return { ...rest, sorted };
  });
}
