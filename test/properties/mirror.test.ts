import assert from "node:assert/strict";
import { areMirrored, evenSketch, piecesOf } from "../support/mirrored-pieces.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, randomSketch, SQUARE } from "../support/random-sketch.js";
import { solveClean } from "../support/solve-text.js";
import { leftToSolver, mirrored } from "../support/turn-sketch.js";

const PLANS = 100;

describe(`${PLANS} random plans and their mirror images`, () => {
  it("with square sides have mirrored pieces, to the nanometre", () => {
    compareMirrored({ ...SQUARE, holes: true });
  });

  it("with measured sides have mirrored pieces, to the nanometre", () => {
    compareMirrored(ANY);
  });

  it("left to the solver, come to the same score", () => {
    for (let seed = 0; seed < PLANS / 4; seed++) {
      const sketch = leftToSolver(evenSketch(randomSketch(seed, SQUARE)), null);
      const [here, there] = [sketch, mirrored(sketch)].map((each) =>
        solveClean(printSketch(each, "mm")).solved.walls.map(
          ({ lays }) => lays[0]?.choice?.chosen.score,
        ),
      );
      assert.deepEqual(there, here, `seed ${seed}\n${printSketch(sketch, "mm")}`);
    }
  });
});

function compareMirrored(options: typeof ANY): void {
  for (let seed = 0; seed < PLANS; seed++) {
    const sketch = evenSketch(randomSketch(seed, options));
    const [here, there] = [sketch, mirrored(sketch)].map(
      (each) => solveClean(printSketch(each, "mm")).solved.walls,
    );
    here!.forEach((wall, i) => {
      const mirror = piecesOf(there![i]!, wall.wall.size.across);
      const pieces = piecesOf(wall, null);
      if (!areMirrored(mirror, pieces))
        assert.deepEqual(mirror, pieces, `seed ${seed}\n${printSketch(sketch, "mm")}`);
    });
  }
}
