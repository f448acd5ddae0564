import assert from "node:assert/strict";
import { doubleShapeArea, regionShapes, type Shape } from "../../src/solver/index.js";
import { holeRing } from "../support/circle.js";
import { roundingBound } from "../support/check-shape.js";
import { boxRing, subtract } from "../support/clipping.js";
import { freeWall } from "../support/free-wall.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, randomSketch } from "../support/random-sketch.js";
import { outsideRings, referenceWall } from "../support/reference-wall.js";
import { firstWall, solveClean, solveText } from "../support/solve-text.js";

const PLANS = 150;

function areaOf(shapes: readonly Shape[]): bigint {
  return shapes.reduce((sum, shape) => sum + doubleShapeArea(shape), 0n);
}

describe("a region's shapes", () => {
  it(`are what another library cuts out of ${PLANS} random walls`, () => {
    let sloped = 0;
    for (let seed = 0; seed < PLANS; seed++) {
      const text = printSketch(randomSketch(seed, ANY), "mm");
      const { plan, solved } = solveClean(text);
      for (const { wall, region, lays } of solved.walls) {
        const reference = referenceWall(plan, wall, lays[0]!.joint);
        const taken = [...outsideRings(reference), ...reference.circles.map(holeRing)];
        const wanted = subtract([boxRing(region.bounds)], taken);
        const found = regionShapes(region);
        // Whole nanometres where all is square; each crossing may be rounded otherwise on a slope or an arc.
        const bound = [...found, ...wanted].reduce((sum, shape) => sum + roundingBound(shape), 0);
        const off = Number(areaOf(found) - areaOf(wanted)) / 2;
        assert.ok(Math.abs(off) <= bound, `seed ${seed}, ${wall.name}: ${off} over ${bound}`);
        if (Object.values(wall.edges).some(({ measured }) => measured.length > 0)) sloped++;
      }
    }
    assert.ok(sloped > PLANS / 10);
  });

  it("are none of a wall that its sides leave nothing of", () => {
    const text = freeWall({
      face: "2 x 1",
      size: "4 x 4",
      joint: "1/8",
      wall: ["left wall movement 3", "right wall movement 3"],
    });
    assert.deepEqual(regionShapes(solveText(text).solved.walls[0]!.region), []);
  });

  it("are several where an opening parts the wall", () => {
    const door = ["door way {", "at 2", "size 1 x 4", "movement 0", "}"];
    const text = freeWall({ face: "2 x 1", size: "6 x 4", joint: "1/8", wall: door });
    const { wall } = firstWall(solveText(text));
    assert.equal(regionShapes(wall.region).length, 2);
  });
});
