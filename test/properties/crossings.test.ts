import assert from "node:assert/strict";
import { pieceShape, type Box, type SolvedLay } from "../../src/solver/index.js";
import { printSketch } from "../support/print-sketch.js";
import { randomSketch, SQUARE } from "../support/random-sketch.js";
import { tileAt, tileNumberAt } from "../support/reference-lattice.js";
import { referenceWall, type ReferenceWall, type SideLine } from "../support/reference-wall.js";
import { cornersOf, type Corner } from "../support/ring.js";
import { firstWall, solveClean } from "../support/solve-text.js";

const WALLS = 200;
/** Half a nanometre: as far as rounding once may move a crossing. In half nanometres. */
const HALF = 1;

describe(`corners of pieces on ${WALLS} random walls with measured sides`, () => {
  it("are exact, or where a slope crosses a straight cut, rounded once to the nanometre", () => {
    let crossings = 0;
    for (let seed = 0; seed < WALLS; seed++) {
      const options = { ...SQUARE, measured: 0.8, corners: false };
      const text = printSketch(randomSketch(seed, options), "mm");
      const answer = solveClean(text);
      const { wall, laid } = firstWall(answer);
      const reference = referenceWall(answer.plan, wall.wall, laid.joint);
      for (const i of laid.pieces.shapes.keys()) {
        const lines = linesAt(laid, reference, i);
        for (const corner of cornersOf(pieceShape(laid.pieces, i).outline)) {
          const kind = explain(corner, lines, reference);
          assert.notEqual(
            kind,
            null,
            `corner ${String(corner)} of piece ${i}, seed ${seed}\n${text}`,
          );
          if (kind === "crossing") crossings++;
        }
      }
    }
    assert.ok(crossings > WALLS, `${crossings} crossings`);
  });
});

interface Lines {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** The upright and level lines that may bound a piece: its tile's, the openings', the flat sides'. */
function linesAt(laid: SolvedLay, { openings, sides }: ReferenceWall, i: number): Lines {
  const course = laid.pieces.course[i]!;
  const tile = tileAt(laid, course, tileNumberAt(laid, course, laid.pieces.bounds[4 * i]!));
  const boxes: Box[] = [tile, ...openings];
  const values = (upright: boolean) =>
    sides
      .filter(({ side }) => (side === "left" || side === "right") === upright)
      .flatMap(({ points }) => points.map(([, value]) => value));
  return {
    x: [...boxes.flatMap(({ left, right }) => [left, right]), ...values(true)],
    y: [...boxes.flatMap(({ bottom, top }) => [bottom, top]), ...values(false)],
  };
}

function explain(
  [x, y]: Corner,
  lines: Lines,
  { sides }: ReferenceWall,
): "square" | "crossing" | null {
  const [onX, onY] = [lines.x.includes(x), lines.y.includes(y)];
  if (onX && onY) return "square";
  for (const line of sides) {
    const isUpright = line.side === "left" || line.side === "right";
    const [at, value] = isUpright ? [y, x] : [x, y];
    if (line.points.some(([a, v]) => a === at && v === value)) return "square";
    const [onAt, onValue] = isUpright ? [onY, onX] : [onX, onY];
    if (onAt && isNearest(line, at, value)) return "crossing";
    if (onValue && isNearestAlong(line, at, value)) return "crossing";
  }
  // Where two sides cross, neither coordinate is given: both sides pass within a nanometre.
  const [level, upright] = [sides.slice(2), sides.slice(0, 2)].map((some, i) =>
    some.some((line) => (i === 0 ? isWithinOne(line, x, y) : isWithinOne(line, y, x))),
  );
  return level && upright ? "crossing" : null;
}

/** Whether `value` is the line's value at `at`, rounded to the nearest. */
function isNearest(line: SideLine, at: number, value: number): boolean {
  return distance(line, at, value, HALF);
}

function isWithinOne(line: SideLine, at: number, value: number): boolean {
  return distance(line, at, value, 2 * HALF);
}

/** Whether the line passes within `halves` half nanometres of a value at a place. */
function distance({ points }: SideLine, at: number, value: number, halves: number): boolean {
  if (at <= points[0]![0]) return value === points[0]![1];
  if (at >= points.at(-1)![0]) return value === points.at(-1)![1];
  const i = points.findIndex(([place]) => place >= at);
  const [[a0, v0], [a1, v1]] = [points[i - 1]!, points[i]!];
  const run = BigInt(a1 - a0);
  const off = BigInt(value - v0) * run - BigInt(v1 - v0) * BigInt(at - a0);
  return 2n * (off < 0n ? -off : off) <= BigInt(halves) * run;
}

/** Whether the line takes a value within half a nanometre of a place along it. */
function isNearestAlong({ points }: SideLine, at: number, value: number): boolean {
  return points.slice(1).some(([a1, v1], i) => {
    const [a0, v0] = points[i]!;
    if (v1 === v0 || (value - v0) * (value - v1) > 0) return false;
    const rise = BigInt(v1 - v0);
    const off = BigInt(at - a0) * rise - BigInt(value - v0) * BigInt(a1 - a0);
    const abs = (n: bigint) => (n < 0n ? -n : n);
    return 2n * abs(off) <= BigInt(HALF) * abs(rise);
  });
}
