import assert from "node:assert/strict";
import { doubleShapeArea, pieceShape, type Shape } from "../../../src/solver/index.js";
import { setAreas } from "../../../src/takeoff/materials/set-areas.js";
import { boxRing, ringsOf, subtract } from "../../support/clipping.js";
import { printSketch } from "../../support/print-sketch.js";
import { randomSketch, SQUARE } from "../../support/random-sketch.js";
import { outsideRings, referenceWall } from "../../support/reference-wall.js";
import { outlinedWall } from "../../solver/trim/outlined-wall.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

const PLANS = 150;

function areaOf(shapes: readonly Shape[]): bigint {
  return shapes.reduce((sum, shape) => sum + doubleShapeArea(shape), 0n);
}

const STOCK =
  "tile field {\n  face 6 x 3\n  thickness 1/4\n}\ntrim nose {\n  face 6 x 2\n  thickness 3/8\n}\n";

function areasOf(lines: string) {
  const { wall, laid } = firstWall(solveClean(`${STOCK}wall back {\n${lines}\n}\n`));
  return setAreas(wall, laid);
}

const LAY =
  "lay field {\n bond stack\n joint 1/8\n across full tile from left\n up full course from bottom\n}";
const FREE = "left free\nright free\nbottom free\ntop free\n";
/** Twice a square inch in nm². */
const SQUARE_INCH = 2n * 25_400_000n ** 2n;
const inches = (area: bigint): number => Number(area) / Number(SQUARE_INCH);

describe("what covers a wall", () => {
  it("is pieces and the void between them, to the square nanometre, by another library", () => {
    let compared = 0;
    for (let seed = 0; seed < PLANS; seed++) {
      const sketch = randomSketch(seed, SQUARE);
      const text = printSketch(sketch, "mm");
      const { plan, solved } = solveClean(text);
      for (const wall of solved.walls) {
        const laid = wall.lays[0]!;
        const sides = Object.values(wall.wall.edges);
        // Frames and trimmed or hard sides have joints outside the region: they have tests of their own.
        if (wall.wall.openings.some(({ frame }) => frame) || wall.trims.length > 0) continue;
        if (sides.some(({ joint }) => joint?.kind === "joint")) continue;
        const pieces = Array.from({ length: laid.pieces.count }, (_, i) =>
          pieceShape(laid.pieces, i),
        );
        const reference = referenceWall(plan, wall.wall, laid.joint);
        const outside = [...outsideRings(reference), ...pieces.flatMap(ringsOf)];
        const areas = setAreas(wall, laid);
        compared++;
        assert.equal(areas.tiles, areaOf(pieces), `seed ${seed}`);
        assert.equal(
          areas.tileJoints,
          areaOf(subtract([boxRing(wall.region.bounds)], outside)),
          `seed ${seed}\n${text}`,
        );
      }
    }
    assert.ok(compared > PLANS / 5, `${compared} walls`);
  });

  it("has joints round every tile", () => {
    // Two tiles by two, and a joint of 1/8 between them both ways.
    const areas = areasOf(`size 12 1/8 x 6 1/8\n${FREE}${LAY}`);
    assert.equal(inches(areas.tiles), 72);
    assert.equal(inches(areas.tileJoints), 12.125 / 8 + 6.125 / 8 - 1 / 64);
    assert.deepEqual([areas.trims, areas.trimJoints], [0n, []]);
  });

  it("has the joint along a hard side, and none along a soft one", () => {
    const sides = "left wall joint 1/4\nright wall movement 1/4\nbottom free\ntop free\n";
    const areas = areasOf(`size 6 1/2 x 3\n${sides}${LAY}`);
    assert.equal(inches(areas.tiles), 18);
    assert.equal(inches(areas.tileJoints), 3 / 4);
  });

  it("has the joint to a free edge's trim, and those between its pieces", () => {
    const sides = "left free trim nose\nright free\nbottom free\ntop free\n";
    const areas = areasOf(`size 8 1/8 x 12 1/4\n${sides}${LAY}`);
    // One column of four courses, trim 12 1/4 long: two pieces of 6 in and what the joint leaves.
    assert.equal(inches(areas.tiles), 6 * (12.25 - 3 / 8));
    assert.equal(inches(areas.tileJoints), (6 * 3) / 8 + 12.25 / 8);
    const [joint] = areas.trimJoints;
    assert.equal(areas.trimJoints.length, 2);
    assert.deepEqual([inches(joint!.doubleArea), joint!.thickness], [2 / 8, (25_400_000 * 3) / 8]);
    assert.equal(inches(areas.trims), 2 * 12.25 - 2 * (2 / 8));
  });

  it("has the joint round a frame, and those in its mitred corners", () => {
    const window = "window sash {\n at 12, 12\n size 8 x 8\n frame nose mitre\n}\n";
    const areas = areasOf(`size 36 x 36\n${FREE}${window}${LAY}`);
    const [joint] = areas.trimJoints;
    assert.equal(areas.trimJoints.length, 1);
    // Each side is two pieces with a joint between them; the corners are cut at 45 degrees across 2 in.
    const corners = 4 * 2 * Math.SQRT2 * (1 / 8);
    const between = 4 * 2 * (1 / 8);
    // A mitre stands back by whole nanometres.
    const rounded = (4 * 4) / 25_400_000;
    assert.ok(Math.abs(inches(joint!.doubleArea) - corners - between) < rounded);
    // What is tiled or grouted ends at the frame.
    assert.equal(inches(areas.tiles + areas.tileJoints), 36 * 36 - 12 * 12);
  });

  it("has no joint under a door's frame", () => {
    const door = "door way {\n at 12\n size 8 x 20\n frame nose butt\n}\n";
    const areas = areasOf(`size 36 x 36\n${FREE}${door}${LAY}`);
    assert.equal(inches(areas.tiles + areas.tileJoints), 36 * 36 - 12 * 22);
    const [joint] = areas.trimJoints;
    // The head is two pieces, each jamb four; two joints are under the head.
    assert.equal(inches(joint!.doubleArea), (1 + 2 * 3 + 2) * (2 / 8));
  });

  it("has nothing of what is filled with sealant, to the square nanometre", () => {
    const soft = LAY.replace("}", " movement joint over course 2\n movement joint at 18\n}");
    const niche = "niche shelf {\n at 10, 20\n size 12 x 6\n movement 1/8\n}\n";
    const [hard, less] = [LAY, soft].map((lay) => areasOf(`size 36 x 36\n${FREE}${niche}${lay}`));
    assert.equal(hard!.tiles, less!.tiles);
    // The level one is 36 long; the upright one 36 less the crossing and the niche's 6 1/4.
    const filled = 36 / 8 + (36 - 1 / 8 - 6.25) / 8;
    assert.equal(inches(hard!.tileJoints - less!.tileJoints), filled);
  });

  it("counts a soft joint between lays with the first of them", () => {
    const areas = (between: string) => {
      const low = `lay field {\n bond stack\n joint 1/8\n covers bottom to 18\n ${between}\n}\n`;
      const { wall } = firstWall(
        solveClean(`${STOCK}wall back {\nsize 36 x 36\n${FREE}${low}${LAY}\n}\n`),
      );
      return wall.lays.map((lay) => inches(setAreas(wall, lay).tileJoints));
    };
    const [hard, soft] = [areas("between 1/4"), areas("between movement 1/4")];
    assert.equal(hard[1], soft[1]);
    assert.equal(hard[0]! - soft[0]!, 36 / 4);
  });

  it("has the joints in the mitres of trim along slopes", () => {
    const areasAlong = (outline: string) => {
      const sides = ["left wall movement 3", "right wall movement 3", "top free trim edging"];
      const { wall, laid } = firstWall(outlinedWall(outline, ...sides));
      return setAreas(wall, laid).trimJoints.map((joint) => Number(joint.doubleArea) / 2e12);
    };
    const total = (areas: readonly number[]) => areas.reduce((sum, each) => sum + each, 0);
    // 3 in 4 up and down: the mitre at the ridge is plumb, 20 x 5/4 long; a joint of 2, half of it with each slope.
    const ridge = areasAlong("0, 0 to 800, 0 to 800, 300 to 400, 600 to 0, 300");
    assert.equal(ridge.length, 2);
    assert.ok(Math.abs(total(ridge) - 2 * 25) < 0.001, `${total(ridge)}`);
    // In a valley the same, round the tile.
    const valley = areasAlong("0, 0 to 800, 0 to 800, 600 to 400, 300 to 0, 600");
    assert.ok(Math.abs(total(valley) - 2 * 25) < 0.001, `${total(valley)}`);
    // Level, then 3 down on 4: half of the turn has the tangent 1/3, so that the mitre is 20 x √(1 + 1/9) long.
    const bend = areasAlong("0, 0 to 800, 0 to 800, 300 to 400, 600 to 0, 600");
    assert.ok(Math.abs(total(bend) - 2 * 20 * Math.hypot(1, 1 / 3)) < 0.001, `${total(bend)}`);
    assert.deepEqual(areasAlong("0, 0 to 600, 0 to 600, 750 to 0, 300"), []);
  });
});
