import assert from "node:assert/strict";
import type { Nm } from "../../src/measure/index.js";
import { boundsOf, cutOf, pieceShape, type Ring, type SolvedWall } from "../../src/solver/index.js";
import { printSketch } from "../support/print-sketch.js";
import { ANY, randomSketch, SQUARE } from "../support/random-sketch.js";
import { fromLowest, turnedRound } from "../support/ring.js";
import type { Sketch } from "../support/sketch.js";
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
      const sketch = leftToSolver(evenSketch(seed, SQUARE), null);
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
    const sketch = evenSketch(seed, options);
    const [here, there] = [sketch, mirrored(sketch)].map(
      (each) => solveClean(printSketch(each, "mm")).solved.walls,
    );
    here!.forEach((wall, i) => {
      const told = () => `seed ${seed}\n${printSketch(sketch, "mm")}`;
      compareWalls(piecesOf(there![i]!, wall.wall.size.across), piecesOf(wall, null), told);
    });
  }
}

/** Corner for corner; a crossing on exactly half a nanometre may be rounded to either side. */
function compareWalls(
  mirror: readonly Piece[],
  pieces: readonly Piece[],
  told: () => string,
): void {
  const same =
    mirror.length === pieces.length &&
    pieces.every((piece, i) => {
      const { course, cut, rings } = mirror[i]!;
      const isScribed = piece.cut === "scribe" || piece.cut === "hole";
      return (
        course === piece.course &&
        cut === piece.cut &&
        rings.length === piece.rings.length &&
        rings.every((ring, k) => areAlike(ring, piece.rings[k]!, isScribed ? 1 : 0))
      );
    });
  if (!same) assert.deepEqual(mirror, pieces, told());
}

function areAlike(ring: Ring, other: Ring, within: Nm): boolean {
  return (
    ring.length === other.length && ring.every((value, i) => Math.abs(value - other[i]!) <= within)
  );
}

/**
 * A sketch whose courses shift by whole nanometres. A third of a module is rounded alike from either
 * side; only a fraction of exactly a half is not.
 */
function evenSketch(seed: number, options: typeof ANY): Sketch {
  const sketch = randomSketch(seed, options);
  return {
    ...sketch,
    walls: sketch.walls.map((wall) => {
      const { bond, joint } = wall.lay;
      const isEven = bond === "stack" || (sketch.tile.across + (joint as Nm)) % bond.q === 0;
      return isEven ? wall : { ...wall, lay: { ...wall.lay, bond: { p: 1, q: 2 } } };
    }),
  };
}

interface Piece {
  readonly course: number;
  readonly cut: string;
  /** The outline first. */
  readonly rings: readonly Ring[];
}

/** The pieces of a wall from left to right, turned over a width where one is given. */
function piecesOf({ lays }: SolvedWall, width: Nm | null): Piece[] {
  return lays
    .flatMap(({ pieces }) =>
      Array.from({ length: pieces.count }, (_, i): Piece => {
        const { outline, holes } = pieceShape(pieces, i);
        const rings = [outline, ...holes].map((ring) => turned(ring, width));
        return { course: pieces.course[i]!, cut: cutOf(pieces, i), rings };
      }),
    )
    .sort((a, b) => a.course - b.course || compareBounds(a, b));
}

function compareBounds(a: Piece, b: Piece): number {
  const [p, q] = [boundsOf(a.rings[0]!), boundsOf(b.rings[0]!)];
  return p.left - q.left || p.bottom - q.bottom || p.right - q.right || p.top - q.top;
}

function turned(ring: Ring, width: Nm | null): Ring {
  if (width === null) return ring;
  const over = ring.map((value, i) => (i % 2 === 0 ? width - value : value));
  return fromLowest(turnedRound(over));
}
