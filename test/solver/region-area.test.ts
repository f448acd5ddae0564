import assert from "node:assert/strict";
import {
  doubleArea,
  doubleRegionArea,
  doubleShapeArea,
  regionOf,
  type Shape,
} from "../../src/solver/index.js";
import { parse, resolve } from "../../src/language/index.js";
import { costOf } from "../language/telling.js";
import { holeRing } from "../support/circle.js";
import { roundingBound } from "../support/check-shape.js";
import { boxRing, subtract } from "../support/clipping.js";
import { freeWall } from "../support/free-wall.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, randomSketch } from "../support/random-sketch.js";
import { inches } from "../support/layout.js";
import { outsideRings, referenceWall } from "../support/reference-wall.js";
import { ALONE, solveClean, solveText } from "../support/solve-text.js";

const PLANS = 150;

function areaOf(shapes: readonly Shape[]): bigint {
  return shapes.reduce((sum, shape) => sum + doubleShapeArea(shape), 0n);
}

describe("a region's area", () => {
  it(`is that of what another library cuts out of ${PLANS} random walls`, () => {
    let sloped = 0;
    for (let seed = 0; seed < PLANS; seed++) {
      const text = printSketch(randomSketch(seed, ANY), "mm");
      const { plan, solved } = solveClean(text);
      for (const { wall, region, lays } of solved.walls) {
        const reference = referenceWall(plan, wall, lays[0]!.joint);
        const taken = [...outsideRings(reference), ...reference.circles.map(holeRing)];
        const wanted = subtract([boxRing(region.bounds)], taken);
        // Whole nanometres where all is square; each crossing may be rounded otherwise on a slope or an arc.
        const bound = 2 * wanted.reduce((sum, shape) => sum + roundingBound(shape), 0);
        const off = Number(doubleRegionArea(region) - areaOf(wanted)) / 2;
        assert.ok(Math.abs(off) <= bound, `seed ${seed}, ${wall.name}: ${off} over ${bound}`);
        if (Object.values(wall.edges).some(({ measured }) => measured.length > 0)) sloped++;
      }
    }
    assert.ok(sloped > PLANS / 10);
  });

  it("is the same however many openings and holes it is halved for", () => {
    const most = 500;
    const places = Array.from({ length: most }, (_, i) => [
      20 + 40 * (i % 25),
      20 + 60 * Math.floor(i / 25),
    ]);
    const windows = places.map(
      ([x, y], i) => `window w${i} {\nat ${x}, ${y}\nsize 20 x 30\nmovement 1/8\n}`,
    );
    const holes = places.map(([x, y], i) => `hole h${i} at ${x! - 10}, ${y} across 4`);
    const text = freeWall({
      face: "12 x 6",
      size: "1020 x 1230",
      joint: "1/16",
      wall: [...windows, ...holes],
    });
    const { plan } = resolve(parse(text), ALONE);
    const region = regionOf(plan, plan.walls[0]!, 0);
    let area = 0n;
    const cost = costOf(() => (area = doubleRegionArea(region)));
    const circle = doubleArea(holeRing({ x: 0, y: 0, across: inches(4) }));
    const window = 2n * BigInt(inches(20.25)) * BigInt(inches(30.25));
    const whole = 2n * BigInt(inches(1020)) * BigInt(inches(1230));
    const off = Number(area - (whole - BigInt(most) * (window + circle))) / 2;
    // A circle that is cut in two is rounded at two places more.
    assert.ok(Math.abs(off) <= most * inches(4), `${off}`);
    assert.ok(cost < 5_000, `${cost} ms`);
  });

  it("is that by hand where a slope ends at a step beyond it", () => {
    // The top falls 3 in 4 from 700 to 400 at 400, steps up to 900 there, and is level to 600.
    const { solved } = solveText(`units mm
tile field {
  face 150 x 75
  thickness 8
}
wall back {
  outline 0, 0 to 600, 0 to 600, 900 to 400, 900 to 400, 400 to 0, 700
  left wall movement 4
  right wall movement 4
  bottom floor movement 4
  top ceiling movement 5
  lay field {
    bond stack
    joint 2
    across full tile from left
    up full course from bottom
  }
}
`);
    // Under the slope 5 square to it are 6.25: 689.75 high at 0, less 3/4 of each mm, from 4 to 404, since the riser's
    // joint is 4 wide; then 192 wide and 891 high.
    const wanted = 689.75 * 400 - 0.375 * (404 ** 2 - 4 ** 2) + 192 * 891;
    const found = Number(doubleRegionArea(solved.walls[0]!.region)) / 2e12;
    // Three nanometres at most along 600 mm.
    assert.ok(found <= wanted && found > wanted - 0.002, `${found} ${wanted}`);
  });

  it("is none of a wall that its sides leave nothing of", () => {
    const text = freeWall({
      face: "2 x 1",
      size: "4 x 4",
      joint: "1/8",
      wall: ["left wall movement 3", "right wall movement 3"],
    });
    assert.equal(doubleRegionArea(solveText(text).solved.walls[0]!.region), 0n);
  });
});
