import assert from "node:assert/strict";
import {
  boundsOf,
  doubleShapeArea,
  overlaps,
  pieceShape,
  type Box,
  type Ring,
  type Shape,
  type SolvedLay,
  type SolvedPlan,
} from "../../src/solver/index.js";
import { roundingBound } from "../support/check-shape.js";
import { isClearOf } from "../support/check-region.js";
import { holeRing } from "../support/circle.js";
import { boxRing, subtract } from "../support/clipping.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, randomSketch, SQUARE } from "../support/random-sketch.js";
import { tileAt, tileNumberAt } from "../support/reference-lattice.js";
import { beyond, isSquare, referenceWall, type ReferenceWall } from "../support/reference-wall.js";
import { solveClean } from "../support/solve-text.js";

const WALLS = 1000;
/** Courses and columns looked at beyond the wall, where no piece may be. */
const MARGIN = 2;

// The reference is clipper-lib: each tile of the lattice, less what lies beyond each side, the
// openings and the holes, all worked out from the model (reference-wall.ts).
describe(`pieces on ${WALLS} random walls, against a polygon clipping library`, () => {
  const tally = { tiles: 0, cut: 0, sloped: 0, round: 0 };

  it("are the tiles clipped: corner for corner where sides are square, by area elsewhere", () => {
    for (let seed = 0; seed < WALLS; seed++) {
      const sketch = randomSketch(seed, seed % 3 === 0 ? { ...SQUARE, holes: true } : ANY);
      const text = printSketch(sketch, seed % 2 === 0 ? "mm" : "inch");
      compareAll(solveClean(text).solved, `seed ${seed}\n${text}`, tally);
    }
  });

  it("the walls had enough of everything in them", () => {
    assert.ok(tally.tiles > 30 * WALLS, `${tally.tiles} tiles`);
    assert.ok(tally.cut > 5 * WALLS, `${tally.cut} cut`);
    assert.ok(tally.sloped > WALLS, `${tally.sloped} at a slope`);
    assert.ok(tally.round > WALLS / 4, `${tally.round} at a round hole`);
  });
});

interface Tally {
  tiles: number;
  cut: number;
  sloped: number;
  round: number;
}

function compareAll(solved: SolvedPlan, told: string, tally: Tally): void {
  for (const { wall, lays } of solved.walls) {
    for (const laid of lays) {
      const reference = referenceWall(solved.plan, wall, laid.joint);
      const found = piecesByTile(laid);
      const { across } = wall.size;
      for (let n = 1 - MARGIN; n <= laid.courses.length + MARGIN; n++) {
        const last = tileNumberAt(laid, n, across) + MARGIN;
        for (let k = tileNumberAt(laid, n, 0) - MARGIN; k <= last; k++) {
          const key = `${n},${k}`;
          const pieces = found.get(key) ?? [];
          found.delete(key);
          compareTile(tileAt(laid, n, k), pieces, reference, tally, () => `tile ${key} of ${told}`);
        }
      }
      assert.deepEqual([...found.keys()], [], `no piece far outside of ${told}`);
    }
  }
}

function piecesByTile(laid: SolvedLay): Map<string, Shape[]> {
  const { pieces } = laid;
  const found = new Map<string, Shape[]>();
  for (let i = 0; i < pieces.count; i++) {
    const course = pieces.course[i]!;
    const key = `${course},${tileNumberAt(laid, course, pieces.bounds[4 * i]!)}`;
    const mates = found.get(key);
    if (mates) mates.push(pieceShape(pieces, i));
    else found.set(key, [pieceShape(pieces, i)]);
  }
  return found;
}

function compareTile(
  tile: Box,
  pieces: readonly Shape[],
  reference: ReferenceWall,
  tally: Tally,
  told: () => string,
): void {
  const sides = reference.sides.filter((line) => !isClearOf(tile, line));
  const openings = reference.openings.filter((box) => overlaps(tile, box));
  const circles = reference.circles.map(holeRing).filter((ring) => overlaps(tile, boundsOf(ring)));
  const slopes = sides.filter((line) => !isSquare(line)).length;
  tally.tiles++;
  if (sides.length + openings.length + circles.length > 0) tally.cut++;
  if (slopes > 0) tally.sloped++;
  if (circles.length > 0) tally.round++;
  const taken: Ring[] = [...sides.map(beyond), ...openings.map(boxRing), ...circles];
  const expected =
    taken.length === 0 ? [{ outline: boxRing(tile), holes: [] }] : subtract([boxRing(tile)], taken);
  if (slopes + circles.length === 0) {
    // As text, since comparing deeply a hundred thousand times takes longer than clipping.
    if (JSON.stringify(pieces) !== JSON.stringify(expected))
      assert.deepEqual(pieces, expected, told());
  } else compareByArea(pieces, expected, told());
}

/**
 * Both sides round each crossing once, so an area may differ by the rounding of both (see
 * `roundingBound`); a part no larger than its own rounding may be missing.
 */
function compareByArea(pieces: readonly Shape[], expected: readonly Shape[], told: string): void {
  const [a, b] = [pieces, expected].map((shapes) =>
    shapes
      .map((shape) => ({ area: Number(doubleShapeArea(shape)) / 2, bound: roundingBound(shape) }))
      .filter(({ area, bound }) => area > bound)
      .sort((p, q) => p.area - q.area),
  );
  assert.equal(a!.length, b!.length, `as many parts: ${told}`);
  a!.forEach((part, i) => {
    const other = b![i]!;
    const difference = Math.abs(part.area - other.area);
    const bound = part.bound + other.bound;
    assert.ok(difference <= bound, `${difference} nm2 apart, ${bound} allowed: ${told}`);
  });
}
