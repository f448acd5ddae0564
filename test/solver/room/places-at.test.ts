import assert from "node:assert/strict";
import { PlacesAt } from "../../../src/solver/room/places-at.js";
import { fieldsOn, INCH, MOVING, SASH } from "./small-room.js";

describe("the places of what may move", () => {
  it("have where it is drawn first, and both its sides on joints of the tiles", () => {
    const places = new PlacesAt(fieldsOn(MOVING, "across full tile from left"), "x", true).of(
      0,
      INCH,
    );
    const inches = places.map(({ at }) => at / INCH);
    assert.equal(inches[0], 12);
    // Tiles from 1 in: 13 and 17 in are their edges, and 16 in are four of them.
    assert.ok(inches.includes(13) && inches.includes(17), inches.join(" "));
    assert.ok(inches.every((at) => at >= 12 && at <= 17));
  });

  it("are the stated one where it may not move in that direction", () => {
    const places = new PlacesAt(fieldsOn(MOVING, ""), "y", true).of(0, 0);
    assert.deepEqual(
      places.map(({ at }) => at / INCH),
      [13],
    );
  });

  it("tell what is missed of a wish for its middle", () => {
    const wishes = "prefer {\n centre on sash\n}\n";
    const places = new PlacesAt(fieldsOn(MOVING, "across full tile from left", wishes), "x", true);
    // Its middle is at 20 in, an edge; at 14 in it is 22, the middle of a tile.
    assert.deepEqual(places.seen(0, 0, 12 * INCH).missed, [{ place: 1, missed: 0 }]);
    assert.deepEqual(places.seen(0, 0, 13 * INCH).missed, [{ place: 1, missed: INCH }]);
  });

  it("are those that bring a start to where it is wanted where that goes with the opening", () => {
    const tied = new PlacesAt(fieldsOn(MOVING, "across tile centred on sash"), "x", true);
    assert.equal(tied.tied, 0);
    // At 12 in a tile is centred on 20: its left edge is at 18, 2 in from 0; 13 in bring it to 3.
    assert.deepEqual(
      tied.of(0, 3 * INCH).map(({ at }) => at / INCH),
      [13, 17],
    );
    assert.equal(new PlacesAt(fieldsOn(SASH, "across tile centred on sash"), "x", true).tied, null);
  });

  it("tell what a wish misses at least where the opening can stand at all", () => {
    const wishes = "prefer {\n whole courses at sill of shelf\n}\n";
    const niche = "niche shelf {\n at 12, 9 to 13\n size 9 x 7\n movement 0\n }";
    const leastOf = (openings: string, isStrict: boolean): number | undefined => {
      const missed = new Map<number, number>();
      new PlacesAt(fieldsOn(openings, "", wishes), "y", isStrict).addLeastMissed(missed, 0);
      return missed.get(1);
    };
    // Its sill is on a joint at 12 in, where its top is at 19; a hole from 18 in up lets it come up to 11.
    assert.equal(leastOf(niche, true), 0);
    const below = `${niche}\nhole valve at 15, 20 across 4`;
    assert.equal(leastOf(below, true), INCH);
    assert.equal(leastOf(below, false), 0);
  });
});
