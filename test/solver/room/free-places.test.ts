import assert from "node:assert/strict";
import {
  placesByEdges,
  placesOnMiddles,
  placesOnTiles,
  placesTied,
  reachingOf,
} from "../../../src/solver/room/free-places.js";
import { WallFields } from "../../../src/solver/room/wall-fields.js";
import { wantingOf } from "../../../src/solver/room/wanting.js";
import { window } from "../choose/model-plan.js";
import { layOf, wallOf } from "../several-lays.js";

/** Tile of 100 x 50 with a joint of 2, from 3 to 997 across and from 3 to 797 up; no limits. */
const lay = layOf("field");
const { plan, wall } = wallOf([lay], {
  openings: [window([400, 300], [80, 60], { movement: 5 })],
});
const fields = new WallFields(wantingOf(plan, []), wall, lay, 2, { cells: 0 }, 1);
const field = fields.first.own;

describe("what an opening takes, from its own place", () => {
  it("begins its joint before that, and is as long as both with the opening", () => {
    assert.deepEqual(reachingOf(fields, 0, "across"), { before: 5, length: 90, size: 80 });
    assert.deepEqual(reachingOf(fields, 0, "up"), { before: 5, length: 70, size: 60 });
  });
});

describe("the places of an opening that are critical", () => {
  it("have its middle on that of a tile or a joint", () => {
    // A tile from 0 to 100 has its middle at 50, the joint behind it at 101; 40 before that it begins.
    const across = placesOnMiddles(
      { min: 0, max: 170 },
      { before: 5, length: 90, size: 80 },
      field.across,
      0,
    );
    assert.deepEqual(
      across.sort((a, b) => a - b),
      [10, 61, 112, 163],
    );
  });

  it("are two beside each other where half a nanometre would be left", () => {
    const across = placesOnMiddles(
      { min: 0, max: 100 },
      { before: 5, length: 91, size: 81 },
      field.across,
      0,
    );
    assert.deepEqual(
      across.sort((a, b) => a - b),
      [9, 10, 60, 61],
    );
  });

  it("bring a lattice that goes with it to where it is wanted", () => {
    // At 5 the lattice is at 2; at 7 it would be at 4, and a module of 12 further on again.
    assert.deepEqual(placesTied({ min: 5, max: 30 }, 2, 12, [4]), [5, 7, 19, 30]);
  });

  it("are the ends of its range at least", () => {
    assert.deepEqual(placesTied({ min: 5, max: 30 }, 2, 12, []), [5, 30]);
    const reaching = { before: 5, length: 90, size: 80 };
    assert.deepEqual(placesOnTiles({ min: 5, max: 30 }, reaching, field.across, []), [5, 30]);
  });

  it("have what it takes begin or end with a tile", () => {
    // Tiles from 3: 105 to 205. What it takes begins 5 before its place and ends 85 behind it.
    const reaching = { before: 5, length: 90, size: 80 };
    const places = new Set(placesOnTiles({ min: 100, max: 220 }, reaching, field.across, [3]));
    for (const at of [105 + 5, 205 + 5, 205 - 85, 207 - 85]) assert.ok(places.has(at), `${at}`);
  });

  it("leave a sliver, half a tile or a whole one to an edge beside it", () => {
    // From 0: 1 before its place are 0, 2, 5 or 10 left; to 100: its end is 11 behind its place.
    assert.deepEqual(
      placesByEdges(
        { min: 0, max: 100 },
        { before: 1, length: 12, size: 10 },
        [2, 5, 10],
        [0, 100],
      ),
      [0, 1, 3, 6, 11, 79, 84, 87, 89, 100],
    );
  });
});
