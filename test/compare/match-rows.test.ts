import assert from "node:assert/strict";
import { matchRows, type Row } from "../../src/compare/match-rows.js";

/** Ten tiles of 100 with joints of 10. */
const ROW: Row = { origin: 0, module: 110, face: 100, first: 0, last: 9, base: 1 };

describe("matchRows", () => {
  it("matches what stands nearest", () => {
    assert.equal(matchRows(ROW, { ...ROW, origin: 40 }), 0);
    assert.equal(matchRows(ROW, { ...ROW, origin: 70 }), -1);
    assert.equal(matchRows(ROW, { ...ROW, origin: -500 }), 5);
  });

  it("keeps the numbers where two are as near", () => {
    assert.equal(matchRows(ROW, { ...ROW, origin: 55 }), 0);
    assert.equal(matchRows(ROW, { ...ROW, origin: -55 }), 0);
    // The one that is number 1 after has number -1 in the lattice.
    assert.equal(matchRows(ROW, { ...ROW, origin: 55, first: -1, base: 2 }), -1);
  });

  it("matches most where the joint changed, however far they drift", () => {
    assert.equal(matchRows(ROW, { ...ROW, module: 150 }), 0);
  });

  it("matches where they drift least among as many", () => {
    // Eight tiles in place of ten, round the same middle: one is left out at each end.
    const fewer = { ...ROW, module: 130, last: 7, origin: 40 };
    assert.equal(matchRows(ROW, fewer), -1);
    assert.equal(matchRows(fewer, ROW), 1);
  });
});
