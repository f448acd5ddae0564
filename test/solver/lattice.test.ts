import assert from "node:assert/strict";
import {
  courseBottom,
  courseShift,
  moduleAcross,
  moduleUp,
  type Lattice,
} from "../../src/solver/index.js";
import { cellsWithin, firstPast, lastBefore } from "../../src/solver/lattice.js";

const lattice: Lattice = { x: 7, y: 11, face: { across: 60, up: 30 }, joint: 2, p: 1, q: 3 };

describe("a lattice", () => {
  it("has face and joint as its module", () => {
    assert.equal(moduleAcross(lattice), 62);
    assert.equal(moduleUp(lattice), 32);
  });

  it("shifts course n by (n - 1) mod q times p/q of a module, rounded once", () => {
    assert.deepEqual(
      [1, 2, 3, 4, 5].map((n) => courseShift(lattice, n)),
      [0, 21, 41, 0, 21],
    );
    assert.equal(courseShift({ ...lattice, p: 0, q: 1 }, 5), 0);
  });

  it("stands its courses a module apart", () => {
    assert.equal(courseBottom(lattice, 1), 11);
    assert.equal(courseBottom(lattice, 4), 107);
  });

  it("finds the first tile past an edge and the last before one", () => {
    // Tiles at 0..60, 62..122, 124..184
    assert.equal(firstPast(0, 60, 62, 59), 0);
    assert.equal(firstPast(0, 60, 62, 60), 1);
    assert.equal(lastBefore(0, 62, 124), 1);
    assert.equal(lastBefore(0, 62, 125), 2);
  });

  it("counts no fewer tiles than a box can touch", () => {
    assert.ok(cellsWithin(lattice, { left: 0, bottom: 0, right: 310, top: 64 }) >= 6 * 3);
  });
});
