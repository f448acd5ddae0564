import assert from "node:assert/strict";
import fc from "fast-check";
import { circleRing } from "../../../src/solver/clip/circle.js";
import { cutOff } from "../../../src/solver/clip/cut-off.js";
import { tidyRing } from "../../../src/solver/clip/ring.js";
import { subtract } from "../../../src/solver/clip/subtract.js";
import type { Ring } from "../../../src/solver/index.js";

const TILE: Ring = [0, 0, 100, 0, 100, 50, 0, 50];

/** What is left, as shapes have their rings. */
function left(taken: Ring, ring = TILE): Ring | null {
  const rest = cutOff(ring, taken);
  // Of less than nothing that is rounded to 0 there would be a -0, which `subtract` makes none of by moving rings back.
  return rest && tidyRing(rest.map((value) => value + 0));
}

/** The same by the graph of edges, which is made where something is taken twice. */
function byGraph(taken: Ring, ring = TILE): Ring[] {
  return subtract({ outline: ring, holes: [] }, [taken, taken]).map(({ outline }) => outline);
}

describe("a ring that is bitten into once", () => {
  it("is mitred at either end", () => {
    assert.deepEqual(left([-60, -10, -5, -10, 65, 60, -60, 60]), [5, 0, 100, 0, 100, 50, 55, 50]);
    assert.deepEqual(left([105, -10, 170, -10, 170, 60, 35, 60]), [0, 0, 95, 0, 45, 50, 0, 50]);
  });

  it("loses a corner, part of an edge, or all but part of one edge", () => {
    assert.deepEqual(left([60, 30, 150, 30, 150, 90, 60, 90]), [
      ...[0, 0, 100, 0, 100, 30, 60, 30, 60, 50, 0, 50],
    ]);
    assert.deepEqual(left([40, -10, 60, -10, 60, 20, 40, 20]), [
      ...[0, 0, 40, 0, 40, 20, 60, 20, 60, 0, 100, 0, 100, 50, 0, 50],
    ]);
    const allRound = [-10, -10, 40, -10, 50, 40, 60, -10, 110, -10, 110, 60, -10, 60];
    assert.deepEqual(left(allRound), [42, 0, 58, 0, 50, 40]);
  });

  it("loses what one edge of the other cuts off, and what all of the other takes from a notch", () => {
    assert.deepEqual(left([60, -10, 120, -10, 120, 20]), [0, 0, 80, 0, 100, 10, 100, 50, 0, 50]);
    const notched = [0, 0, 100, 0, 100, 50, 60, 50, 60, 20, 40, 20, 40, 50, 0, 50];
    assert.deepEqual(left([30, 5, 70, 5, 70, 30, 30, 30], notched), [
      ...[
        0, 0, 100, 0, 100, 50, 60, 50, 60, 30, 70, 30, 70, 5, 30, 5, 30, 30, 40, 30, 40, 50, 0, 50,
      ],
    ]);
  });

  it("is left to the graph where it is touched, or bitten into by other than two crossings", () => {
    assert.equal(left([200, 0, 300, 0, 300, 50]), null);
    assert.equal(left([40, 20, 60, 20, 60, 30]), null);
    assert.equal(left([-10, -10, 110, -10, 110, 60, -10, 60]), null);
    assert.equal(left([40, -10, 60, -10, 60, 60, 40, 60]), null);
    assert.equal(left([50, 0, 60, -10, 80, 20]), null);
    assert.equal(left([40, -10, 60, -10, 60, 50, 40, 20]), null);
  });

  it("is the ring that the graph of edges makes, of any quadrilateral less a triangle or a circle", () => {
    const counted = { bitten: 0, other: 0 };
    const place = fc.integer({ min: 0, max: 1_000_000 });
    const four = fc.tuple(place, place, place, place);
    fc.assert(
      fc.property(
        four,
        fc.array(place, { minLength: 6, maxLength: 6 }),
        place,
        (sides, three, r) => {
          const [a, b, c, d] = sides;
          const ring = [a, -b - 1, 1_000_000 + c + 1, d - b, c + 1, 1_000_001 + d, -a - 1, c];
          const circle = { left: b - r, bottom: c - r, right: b + r, top: c + r };
          for (const taken of [anticlockwise(three), circleRing(circle)]) {
            const made = left(taken, ring);
            if (made) counted.bitten++;
            else counted.other++;
            if (made) assert.deepEqual([made], byGraph(taken, ring));
          }
        },
      ),
      { numRuns: 400 },
    );
    assert.ok(counted.bitten > 50 && counted.other > 50, JSON.stringify(counted));
  });
});

function anticlockwise(three: readonly number[]): Ring {
  const [ax, ay, bx, by, cx, cy] = three as [number, number, number, number, number, number];
  const turn = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  return turn > 0 ? [ax, ay, bx, by, cx, cy] : [ax, ay, cx, cy, bx, by];
}
