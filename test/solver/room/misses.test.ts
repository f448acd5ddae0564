import assert from "node:assert/strict";
import type { Opening } from "../../../src/model/index.js";
import { centreMiss, coursesMiss, isEdgeIn, openingMiss } from "../../../src/solver/room/misses.js";
import type { Lattice } from "../../../src/solver/index.js";

const lattice = (over: Partial<Lattice>): Lattice => ({
  x: 0,
  y: 0,
  face: { across: 60, up: 30 },
  joint: 4,
  p: 0,
  q: 1,
  ...over,
});

describe("what wishes miss", () => {
  it("is, for courses, how far the nearest bed joints are apart: modules of 34", () => {
    assert.equal(coursesMiss(lattice({}), lattice({ y: 68 })), 0);
    assert.equal(coursesMiss(lattice({}), lattice({ y: 5 })), 5);
    assert.equal(coursesMiss(lattice({ y: 5 }), lattice({})), 5);
    // 30 up is 4 down.
    assert.equal(coursesMiss(lattice({}), lattice({ y: 30 })), 4);
  });

  it("is, for courses of 64 and 34 + 34, none where one in two meets: 2 x 34 = 68", () => {
    const large = lattice({ face: { across: 60, up: 64 } });
    assert.equal(coursesMiss(lattice({}), large), 0);
    assert.equal(coursesMiss(lattice({ y: 34 }), large), 0);
  });

  it("is, for courses that can't meet, the height of the smaller tile, at any joint", () => {
    const large = lattice({ face: { across: 60, up: 40 } });
    assert.equal(coursesMiss(lattice({}), large), 30);
    assert.equal(coursesMiss(lattice({ joint: 2 }), large), 30);
  });

  it("is, for a centre, how far the nearest middle of a tile or a joint is", () => {
    const opening = (x: number): Opening =>
      ({ at: { x, y: 0 }, size: { across: 20, up: 20 } }) as Opening;
    // Its middle is at 30, a tile's.
    assert.equal(centreMiss(lattice({}), opening(20)), 0);
    // At 62, a joint's: 60 to 64.
    assert.equal(centreMiss(lattice({}), opening(52)), 0);
    assert.equal(centreMiss(lattice({}), opening(23)), 3);
    assert.equal(centreMiss(lattice({}), opening(48)), 4);
  });

  it("is, for a sill, how far the course below is from ending there, and none within a joint", () => {
    const box = (bottom: number) => ({ left: 0, right: 10, bottom, top: bottom + 10 });
    assert.equal(openingMiss(lattice({}), box(30), "sill"), 0);
    assert.equal(openingMiss(lattice({}), box(33), "sill"), 0);
    assert.equal(openingMiss(lattice({}), box(28), "sill"), 2);
    assert.equal(openingMiss(lattice({}), box(24), "head"), 0);
    assert.equal(openingMiss(lattice({}), box(27), "head"), 3);
  });

  it("of an edge is told where that lies in the tile, its own edges included", () => {
    const at = (bottom: number, top: number) => ({ left: 0, right: 10, bottom, top });
    const region = { bounds: { left: 0, right: 100, bottom: 20, top: 40 } };
    assert.deepEqual(
      [at(20, 60), at(19, 40), at(40, 41), at(41, 60)].map((box) => [
        isEdgeIn(region, box, "sill"),
        isEdgeIn(region, box, "head"),
      ]),
      [
        [true, false],
        [false, true],
        [true, false],
        [false, false],
      ],
    );
  });
});
