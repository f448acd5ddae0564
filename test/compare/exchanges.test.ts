import assert from "node:assert/strict";
import { summarise } from "../../src/compare/index.js";
import { exchanges } from "../../src/compare/exchanges.js";
import { comparisonOf, edited, WALL } from "./wall.js";

/** Without its niche, in half bond: even courses begin with a half tile. */
const HALF = edited(WALL, ["bond stack", "bond running 1/2"]).replace(/ {2}niche[^}]*}\n/, "");
const FLIPPED = edited(HALF, ["across full tile from left", "across joint centred at 2 1/8"]);

describe("pieces that change places", () => {
  const { walls } = comparisonOf(HALF, FLIPPED);
  const { pairs, rest } = exchanges(walls[0]!.pieces.recut);

  it("are pairs of groups, each cut as the other was", () => {
    assert.ok(pairs.length > 0);
    for (const [one, other] of pairs) {
      assert.deepEqual(one.before, other.after);
      assert.deepEqual(one.after, other.before);
    }
    assert.equal(2 * pairs.length + rest.length, walls[0]!.pieces.recut.length);
  });

  it("are told in one line", () => {
    const lines = summarise(comparisonOf(HALF, FLIPPED)).flatMap((section) => section.lines);
    const told = lines.filter((line) => line.includes("change places"));
    assert.equal(told.length, pairs.length);
    assert.equal(
      told[0],
      "5 pieces at the left end change places: 1 15/16 in wide in every other course from 1 to 5, " +
        "whole in courses 2 and 4",
    );
  });

  it("are none where cuts only changed", () => {
    const narrower = comparisonOf(WALL, edited(WALL, ["size 41 3/8 x", "size 40 x"]));
    assert.deepEqual(exchanges(narrower.walls[0]!.pieces.recut).pairs, []);
  });
});
