import assert from "node:assert/strict";
import type { Inside, Tile, Trim } from "../../../src/model/index.js";
import {
  fallOver,
  frontOf,
  levelRun,
  slopeLength,
} from "../../../src/solver/insides/inside-size.js";

const INCH = 25_400_000;
const inside = (depth: number, fall: number | null): Inside => ({
  depth,
  fall,
  tiled: true,
  lays: {},
});
const tile = (thickness: number) => ({ thickness }) as Tile;
const frame = (inset: number, thickness: number) => ({
  frame: { inset, trim: { thickness } as Trim, join: "mitre", origin: null! } as const,
});

describe("where the tile inside an opening ends at the front", () => {
  const lining = { tile: tile(8), joint: 2 };

  it("is flush with the face of the wall's tile, and shows", () => {
    assert.deepEqual(frontOf({ bed: 3 }, { frame: null }, lining, tile(10)), {
      before: 13,
      joint: null,
    });
  });

  it("is the frame's face where the frame doesn't stand in as far as the lining is thick", () => {
    assert.deepEqual(frontOf({ bed: 3 }, frame(10, 9), lining, tile(10)), {
      before: 12,
      joint: null,
    });
  });

  it("is a joint behind the frame's back where it does", () => {
    assert.deepEqual(frontOf({ bed: 3 }, frame(11, 9), lining, tile(10)), { before: 3, joint: 2 });
  });
});

describe("the size of an opening's inside", () => {
  it("runs from the front to the back", () => {
    assert.equal(levelRun(inside(90, 3), { before: 11, joint: null }), 101);
  });

  it("has a sill that goes on falling before the substrate", () => {
    assert.equal(fallOver(inside(90, 3), 120), 4);
    assert.equal(fallOver(inside(90, -3), 120), -4);
    assert.equal(fallOver(inside(90, null), 120), 0);
  });

  it("has a sill as long as its slope", () => {
    // 3-4-5: 4 in deep, falling 3.
    assert.equal(slopeLength(inside(4 * INCH, 3 * INCH), 4 * INCH), 5 * INCH);
    assert.equal(slopeLength(inside(4 * INCH, -3 * INCH), 8 * INCH), 10 * INCH);
    assert.equal(slopeLength(inside(90, 0), 101), 101);
    assert.equal(slopeLength(inside(90, null), 101), 101);
  });

  it("rounds a slope's length once, to the nearest nanometre", () => {
    // sqrt(2) m and, a hundred times as long, more of its digits.
    assert.equal(slopeLength(inside(1_000_000_000, 1_000_000_000), 1_000_000_000), 1_414_213_562);
    assert.equal(
      slopeLength(inside(1_000_000_000, 1_000_000_000), 100_000_000_000),
      141_421_356_237,
    );
  });
});
