import assert from "node:assert/strict";
import fc from "fast-check";
import { type Chain, moved, valueAt } from "../../src/solver/chain.js";
import { drawnIn, sideDrawnIn } from "../../src/solver/draw-in.js";

type Point = readonly [number, number];

describe("a side drawn in square to its slopes", () => {
  it("is drawn in by as much more as the slope is long for its run", () => {
    // 3 along and 4 up are 5 long: 6 square to it are 10 up.
    assert.deepEqual(drawnIn({ at: [0, 300], value: [0, 400] }, 6, 1), {
      at: [0, 300],
      value: [10, 410],
    });
    assert.deepEqual(drawnIn({ at: [0, 300], value: [0, 400] }, 6, -1).value, [-10, 390]);
  });

  it("is moved as it is where it is straight", () => {
    const straight = { at: [0, 300], value: [7, 7] };
    assert.deepEqual(drawnIn(straight, 6, 1), moved(straight, 6));
    assert.deepEqual(drawnIn(straight, 6, -1), moved(straight, -6));
  });

  it("is mitred in its corners, where the moved parts meet", () => {
    // Level, then up at 3 in 4: half of the turn's tangent is a third.
    const rising = drawnIn({ at: [0, 3_000, 7_000], value: [0, 0, 3_000] }, 300, 1);
    assert.deepEqual(rising, { at: [0, 2_900, 7_000], value: [300, 300, 3_375] });
    const falling = drawnIn({ at: [0, 3_000, 7_000], value: [0, 0, -3_000] }, 300, 1);
    assert.deepEqual(falling, { at: [0, 3_100, 7_000], value: [300, 300, -2_625] });
  });

  it("goes on straight over a riser as far as that moves, and begins behind it at its foot", () => {
    // 3 along and 4 up are 5 long. At 300 it drops to 100; the riser faces left, and moves 30 rightwards.
    const chain = { at: [0, 300, 300, 900], value: [20, 420, 100, 100] };
    const moves = { left: 30, right: 0 };
    const inner = drawnIn(chain, 6, 1, moves);
    assert.deepEqual(inner, { at: [0, 330, 330, 900], value: [30, 470, 106, 106] });
    // Out again, it comes to lie where it was.
    assert.deepEqual(drawnIn(inner, -6, 1, { left: -30, right: 0 }), chain);
  });

  it("is moved at risers alone where its slopes stay", () => {
    const chain = { at: [0, 300, 300, 900], value: [100, 100, 0, 400] };
    // Of a top the tile stands left of where it drops.
    assert.deepEqual(drawnIn(chain, 0, -1, { left: 0, right: 30 }), {
      at: [0, 270, 270, 900],
      value: [100, 100, -20, 400],
    });
  });

  it("has no riser left where what is at its foot is wider than it is high", () => {
    // A riser of 10, moved by 30; a slope of 1 in 1 from its foot comes up to the level over it.
    const chain = { at: [0, 300, 300, 900], value: [10, 10, 0, 600] };
    const inner = drawnIn(chain, 0, 1, { left: 30, right: 0 });
    assert.deepEqual(inner, { at: [0, 310, 900], value: [10, 10, 600] });
  });

  it("is drawn out by a negative width, rounded outwards", () => {
    const slope = { at: [0, 3_000, 7_000], value: [0, 0, 3_000] };
    assert.deepEqual(drawnIn(slope, -300, 1), {
      at: [0, 3_100, 7_000],
      value: [-300, -300, 2_625],
    });
  });

  it("leaves out a part that is too short to last", () => {
    const notch = { at: [0, 100, 110, 210], value: [100, 0, 0, 100] };
    // The valley fills up: both slopes, moved by 100, meet over its middle.
    assert.deepEqual(drawnIn(notch, 100, 1), { at: [0, 105, 210], value: [242, 137, 242] });
  });

  it("rounds a slope that can't be exact once, and inwards", () => {
    const slope = { at: [0, 100], value: [0, 100] };
    assert.deepEqual(drawnIn(slope, 100, 1).value, [142, 242]);
    assert.deepEqual(drawnIn(slope, 100, -1).value, [-142, -42]);
  });

  it("is nowhere nearer to the bare side than its width", () => {
    let corners = 0;
    fc.assert(
      fc.property(anyChain, fc.integer({ min: 1, max: 60_000_000 }), (chain, by) => {
        const inner = drawnIn(chain, by, 1);
        assert.ok(inner.at.every((at, i) => i === 0 || at > inner.at[i - 1]!));
        for (const at of chain.at) assert.ok(valueAt(inner, at) > valueAt(chain, at));
        assert.ok(leastSquare(chain, inner, by) >= BigInt(by) ** 2n);
        corners += inner.at.length;
      }),
      { numRuns: 1_000 },
    );
    assert.ok(corners > 3_000);
  });

  it("is further off by no more than a few nanometres along its slopes", () => {
    fc.assert(
      fc.property(anyChain, fc.integer({ min: 1, max: 60_000_000 }), (chain, by) => {
        const inner = drawnIn(chain, by, 1);
        const most = BigInt(by + 6) ** 2n;
        const bare = pointsOf(chain, by);
        inner.at.forEach((at, i) => {
          const point: Point = [at, inner.value[i]!];
          // A mitre's point is further from the corner, but no further from the lines.
          const squares = segments(bare).map(([a, b]) => lineSquare(point, a, b));
          assert.ok(squares.some((square) => square <= most));
        });
      }),
      { numRuns: 300 },
    );
  });
});

describe("a side of a wall", () => {
  const slope: Chain = { at: [0, 300], value: [0, 400] };

  it("is drawn in square to an outline's slopes, and by a nanometre for the rounding of cuts", () => {
    assert.deepEqual(sideDrawnIn({ outlined: true }, slope, 6, 1).value, [12, 412], "7 x 5 / 3");
    assert.deepEqual(sideDrawnIn({ outlined: true }, slope, -6, 1).value, [-12, 388]);
    assert.deepEqual(sideDrawnIn({ outlined: true }, slope, 0, 1), slope);
  });

  it("is drawn in across or up where it was measured", () => {
    assert.deepEqual(sideDrawnIn({ outlined: false }, slope, 6, -1).value, [-6, 394]);
  });
});

const anyChain = fc
  .array(
    fc.record({
      run: fc.integer({ min: 1_000, max: 900_000_000 }),
      slope: fc.integer({ min: -20, max: 20 }),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((parts): Chain => {
    const at = [0];
    const value = [0];
    for (const { run, slope } of parts) {
      at.push(at.at(-1)! + run);
      value.push(value.at(-1)! + Math.trunc((run * slope) / 10));
    }
    return { at, value };
  });

/** A side with what it is flat beyond its ends. */
function pointsOf({ at, value }: Chain, past: number): Point[] {
  return [
    [at[0]! - 3 * past, value[0]!],
    ...at.map((place, i): Point => [place, value[i]!]),
    [at.at(-1)! + 3 * past, value.at(-1)!],
  ];
}

function segments(points: readonly Point[]): (readonly [Point, Point])[] {
  return points.slice(1).map((end, i) => [points[i]!, end] as const);
}

/** The least square of a distance between two sides that don't cross, rounded down. */
function leastSquare(one: Chain, other: Chain, past: number): bigint {
  const [a, b] = [pointsOf(one, past), pointsOf(other, past)];
  const squares = [
    ...a.slice(1, -1).flatMap((point) => segments(b).map(([s, t]) => partSquare(point, s, t))),
    ...b.slice(1, -1).flatMap((point) => segments(a).map(([s, t]) => partSquare(point, s, t))),
  ];
  return squares.reduce((least, square) => (square < least ? square : least));
}

function partSquare(point: Point, from: Point, to: Point): bigint {
  const [dx, dy] = [BigInt(to[0] - from[0]), BigInt(to[1] - from[1])];
  const along = BigInt(point[0] - from[0]) * dx + BigInt(point[1] - from[1]) * dy;
  if (along <= 0n) return pointSquare(point, from);
  if (along >= dx * dx + dy * dy) return pointSquare(point, to);
  return lineSquare(point, from, to);
}

function pointSquare(a: Point, b: Point): bigint {
  return BigInt(a[0] - b[0]) ** 2n + BigInt(a[1] - b[1]) ** 2n;
}

function lineSquare(point: Point, from: Point, to: Point): bigint {
  const [dx, dy] = [BigInt(to[0] - from[0]), BigInt(to[1] - from[1])];
  const cross = dx * BigInt(point[1] - from[1]) - dy * BigInt(point[0] - from[0]);
  return (cross * cross) / (dx * dx + dy * dy);
}
