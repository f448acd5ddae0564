import assert from "node:assert/strict";
import {
  doubleShapeArea,
  grown,
  pieceShape,
  type Ring,
  type SoftPart,
  softJoints,
  type SolvedWall,
} from "../../src/solver/index.js";
import { setAreas, sumOfAreas } from "../../src/takeoff/materials/set-areas.js";
import { layStrips, partsIn } from "../../src/solver/soft/between-lays.js";
import { solveWall } from "../../src/solver/solve-wall.js";
import { areaWithout, within } from "../support/box-area.js";
import { type Lays, randomLays } from "../support/random-lays.js";
import { intersect, ringsOf } from "../support/clipping.js";
import { printSketch } from "../support/print-sketch.js";
import { randomFrom } from "../support/random.js";
import { ANY, randomSketch } from "../support/random-sketch.js";
import { solveClean } from "../support/solve-text.js";

const PLANS = 80;

/** The widest joint between lays of random walls. */
const WIDEST = 12;

/** A plan with hard joints between its lays, and the same with soft ones there and in each lay. */
function pairOf(seed: number): { readonly hard: string; readonly soft: string } {
  const random = randomFrom(seed);
  const sketch = randomSketch(seed, ANY);
  const text = printSketch(sketch, "mm");
  const width = Math.max(...sketch.walls.map(({ across }) => across)) / 1e6;
  const joints = () =>
    [
      ...Array.from(
        { length: random.integer(1, 2) },
        () => `movement joint at ${random.integer(0, Math.ceil(width))}`,
      ),
      ...Array.from(
        { length: random.integer(1, 2) },
        () => `movement joint over course ${random.integer(1, 6)}`,
      ),
    ].join("\n");
  const joint = /^( {4}joint .*)$/gm;
  return {
    hard: text.replace(joint, "$1\n    between 3"),
    soft: text.replace(joint, (line) => `${line}\n    between movement 3\n${joints()}`),
  };
}

function piecesOf({ lays }: SolvedWall): readonly Ring[] {
  return lays.flatMap(({ pieces }) =>
    Array.from({ length: pieces.count }, (_, i) => ringsOf(pieceShape(pieces, i))).flat(),
  );
}

function jointsOf(wall: SolvedWall): bigint {
  return sumOfAreas(wall.lays.map((lay) => setAreas(wall, lay))).tileJoints;
}

function areaOf(parts: readonly Pick<SoftPart, "shape">[]): bigint {
  return parts.reduce((sum, { shape }) => sum + doubleShapeArea(shape), 0n);
}

function sharedBy(some: readonly Ring[], others: readonly Ring[]): bigint {
  return areaOf(intersect(some, others).map((shape) => ({ shape })));
}

describe(`soft joints in the tile of ${PLANS} random plans`, () => {
  const walls = Array.from({ length: PLANS }, (_, seed) => seed).flatMap((seed) => {
    const { hard, soft } = pairOf(seed);
    const [without, having] = [solveClean(hard).solved.walls, solveClean(soft).solved.walls];
    return having.map((wall, i) => {
      const { runs, missed } = softJoints(wall);
      const parts = runs.flatMap((run) => run.parts);
      return { seed, soft, wall, without: without[i]!, runs, missed, parts };
    });
  });

  it("are many, and many are told as missing", () => {
    assert.ok(walls.filter(({ parts }) => parts.length > 0).length > PLANS / 2);
    assert.ok(walls.filter(({ missed }) => missed.length > 0).length > PLANS / 4);
  });

  it("change no piece", () => {
    for (const { seed, soft, wall, without } of walls) {
      assert.deepEqual(piecesOf(wall), piecesOf(without), `seed ${seed}\n${soft}`);
    }
  });

  it("have nothing of any piece, and nothing twice", () => {
    for (const { seed, soft, wall, parts } of walls) {
      const pieces = piecesOf(wall);
      parts.forEach((part, i) => {
        const own = ringsOf(part.shape);
        assert.equal(sharedBy(own, pieces), 0n, `seed ${seed}, part ${i}\n${soft}`);
        const others = parts.slice(i + 1).flatMap(({ shape }) => ringsOf(shape));
        assert.equal(sharedBy(own, others), 0n, `seed ${seed}, part ${i} twice\n${soft}`);
      });
    }
  });

  it("take from grout and mortar what they fill, and no more than there is", () => {
    for (const { seed, soft, wall, without, parts } of walls) {
      if (wall.lays.length === 0) continue;
      assert.equal(jointsOf(without) - jointsOf(wall), areaOf(parts), `seed ${seed}\n${soft}`);
      assert.ok(jointsOf(wall) >= 0n, `seed ${seed}\n${soft}`);
    }
  });
});

describe("the joints between the lays of random walls", () => {
  it("are all that is between them, but for the corner where three lays meet", () => {
    let [compared, met] = [0, 0];
    for (let seed = 0; seed < PLANS; seed++) {
      const sketch = randomLays(randomFrom(seed), {
        measured: false,
        openings: false,
        running: true,
      });
      if (reachesSide(sketch)) continue;
      const wall = solveWall(sketch.plan, sketch.wall, new Map());
      const boxes = layStrips(wall).map(({ box }) => box);
      const parts = boxes.flatMap((box, i) => partsIn(null, wall.region, box, boxes.slice(0, i)));
      const between = sketch.between.reduce(
        (sum, { box, without }) => sum + areaWithout(within(box, sketch.region), without),
        0n,
      );
      const names = sketch.parts.map(({ lay }) => lay.name).join();
      const left = 2n * between - areaOf(parts);
      compared++;
      // A corner of a joint, twice its area.
      if (left > 0n) met++;
      assert.ok(
        left >= 0n && left <= 2n * BigInt(WIDEST) ** 2n,
        `seed ${seed}: ${names}, ${left} left`,
      );
      if (!names.includes("low")) assert.equal(left, 0n, `seed ${seed}: ${names}`);
    }
    assert.ok(compared > PLANS / 2 && met < PLANS / 2, `${met} of ${compared}`);
  });
});

/** Whether a panel's joint lies at a side of the wall, with no tile beyond it. */
function reachesSide({ parts, region }: Lays): boolean {
  return parts
    .filter(({ lay }) => lay.name === "panel")
    .some(({ box }) => {
      const { left, right, bottom, top } = grown(box, WIDEST);
      return (
        left <= region.left || right >= region.right || bottom <= region.bottom || top >= region.top
      );
    });
}
