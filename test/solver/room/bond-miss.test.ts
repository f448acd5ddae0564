import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { bondMiss, gapBetween, isOneTile } from "../../../src/solver/room/bond-miss.js";
import { type BondedRoom, bondedRoom, endsOf } from "./bonded-room.js";

/** What the bond misses at the corner, in inches. */
function missIn(parts: BondedRoom): number {
  const solved = bondedRoom({ ...parts, wishes: [] });
  const ends = endsOf(solved);
  return bondMiss(...ends, gapBetween(solved.plan, ...ends)) / NM_PER.inch;
}

// The first wall's tile in the middle is centred on 30; the next joints to the right run to the last tile, whose left edge is
// at 27 + 5 x 6 1/16 = 57 5/16: to the other's tile, 1/8 before 60, it shows 2 9/16.
const one = "tile centred on wall";
/** The second wall's first tile shows this much; it begins behind the other's tile and bed of 1/8 and a joint of 1/8. */
const begin = (inches: number): BondedRoom => ({
  one,
  two: `tile centred at ${1 / 4 + inches - 3 + 6 + 1 / 16}`,
});

describe("what a bond misses at a corner", () => {
  it("is nothing where it is wrapped, mirrored or begun again", () => {
    assert.equal(missIn({ one, two: "wrapped from one added" }), 0);
    assert.equal(missIn({ one, two: "wrapped from one swallowed" }), 0);
    assert.equal(missIn({ one, two: "mirrored from one" }), 0);
    assert.equal(missIn({ one, two: "full tile from left" }), 0);
  });

  it("is the way to the nearest of these", () => {
    // Added 3 7/16, swallowed 3 5/16, mirrored 2 9/16, begun again 6.
    assert.equal(missIn(begin(3 + 7 / 16)), 0);
    assert.equal(missIn(begin(3 + 11 / 16)), 1 / 4);
    assert.equal(missIn(begin(2)), 9 / 16);
    assert.equal(missIn(begin(5.5)), 1 / 2);
  });

  it("is that of the worst course of the bond's repeat", () => {
    // A third of a module is 2 1/48: mirrored, the courses of the two walls run apart.
    const bond = "running 1/3";
    assert.equal(missIn({ one, two: "wrapped from one added", bond }), 0);
    // Swallowed, all would begin with 3/4 more; mirrored, course 2 would with 2 1/48 twice less.
    assert.equal(missIn({ one, two: "mirrored from one", bond }), 3 / 4);
  });

  it("is a whole tile where courses don't meet", () => {
    assert.equal(missIn({ one, two: "full tile from left", up: "25" }), 6);
  });

  it("is none of two tiles, which have no bond in common", () => {
    const face = { across: 6, up: 3 };
    assert.equal(isOneTile({ face }, { face }), true);
    assert.equal(isOneTile({ face }, { face: { ...face, up: 4 } }), false);
  });
});
