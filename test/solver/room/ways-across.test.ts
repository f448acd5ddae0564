import assert from "node:assert/strict";
import { compareCosts } from "../../../src/solver/room/cost.js";
import { PlacesAt } from "../../../src/solver/room/places-at.js";
import { WaysAcross } from "../../../src/solver/room/ways-across.js";
import { fieldsOn, INCH, MOVING, SASH } from "./small-room.js";

function waysOf(sash: string, lay: string): WaysAcross {
  const fields = fieldsOn(sash, lay);
  return new WaysAcross(fields, new PlacesAt(fields, "x", true), () => null);
}

describe("the ways to start across a wall", () => {
  it("are the one that is stated", () => {
    assert.deepEqual(
      waysOf(SASH, "across full tile from left").all.map(({ x }) => x),
      [0],
    );
  });

  it("are looked at by what they cost at least, the least first", () => {
    const ways = waysOf(SASH, "up full course from bottom");
    assert.ok(ways.all.length > 3);
    for (const [i, way] of ways.all.slice(1).entries()) {
      assert.ok(compareCosts(ways.all[i]!.least, way.least) <= 0);
    }
    assert.deepEqual(waysOf(SASH, "up full course from bottom").least, ways.all[0]!.least);
  });

  it("go with what may move, at the ends of its range at least", () => {
    const inches = waysOf(MOVING, "across tile centred on sash").all.map(({ x }) => x / INCH);
    // A tile is centred on 20 in, and on 25: from 18 and 23, which are 2 and 3 from 0.
    assert.ok(inches.includes(2) && inches.includes(3), inches.join(" "));
  });
});
