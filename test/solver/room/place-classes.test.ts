import assert from "node:assert/strict";
import { classOf } from "../../../src/solver/room/place-classes.js";
import { fieldsOn, INCH, SASH } from "./small-room.js";

/** Tiles of 4 in: under 4/3 in is a sliver, under 2 in under half. */
const { own } = fieldsOn(SASH, "across full tile from left").first;
const kind = (from: number, to: number, hasEnds = false, origin = 0) =>
  classOf(origin * INCH, { from: from * INCH, to: to * INCH }, "across", [own], hasEnds);

describe("how a stretch cuts a row of whole tiles", () => {
  it("is the same a whole tile further on, and for pieces alike", () => {
    assert.equal(kind(9, 13), kind(13, 17));
    assert.equal(kind(9, 13), kind(9.25, 13.25));
  });

  it("is another with a joint met, a sliver, half a tile or one tile more", () => {
    const kinds = [kind(8, 12), kind(9, 13), kind(9.5, 13.5), kind(10, 14), kind(9, 17)];
    assert.equal(new Set(kinds).size, 5, kinds.join(", "));
  });

  it("tells which tiles they are where the wall's ends may cut them", () => {
    assert.notEqual(kind(9, 13, true), kind(13, 17, true));
    // From 1 in on, the first tile is cut to 1 in by the end at 0, and seen so before 0.5.
    assert.notEqual(kind(0.5, 4.5, true, 1), kind(2.5, 6.5, true, 1));
  });
});
