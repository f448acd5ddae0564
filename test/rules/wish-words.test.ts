import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import type { Wanted, Wish } from "../../src/model/index.js";
import { isMet, lossWords, missWords, priceWords, wishWords } from "../../src/rules/wish-words.js";
import { askedOf, roomWall, SASH } from "../solver/room/small-room.js";

const plan = askedOf(roomWall("back", SASH, ""));
const { origin } = plan.walls[0]!;
const wish = (wanted: Wanted): Wish => ({ wanted, wall: null, origin });
const score = { slivers: 0, underHalf: 0, imbalance: 0, cuts: 4, tiles: 9, jointOver: 0 };
const inch = NM_PER.inch;
const meet = wish({ kind: "courses-meet" });
const few = wish({ kind: "few-cuts" });

describe("wishes in words", () => {
  it("are as the plan would state them", () => {
    const sash = { wall: "back", opening: "sash" };
    assert.equal(wishWords(meet, "inch"), "courses meet");
    assert.equal(wishWords(wish({ kind: "bond-goes-on" }), "inch"), "bond goes on");
    assert.equal(wishWords(wish({ kind: "no-cut", under: 2 * inch }), "inch"), "no cut under 2");
    assert.equal(
      wishWords(wish({ kind: "whole-at-opening", at: "sill", of: sash }), "inch"),
      "whole courses at sill of sash",
    );
  });

  it("say how far they are missed, also where that reads as nothing", () => {
    assert.equal(missWords(meet, inch / 8, "inch"), "1/8 in off in all");
    assert.equal(missWords(meet, 1, "inch"), "0+ in off in all");
    const goesOn = wish({ kind: "bond-goes-on" });
    assert.equal(missWords(goesOn, inch / 4, "inch"), "1/4 in off in all");
    assert.equal(missWords(few, 1, "inch"), "1 cut");
    assert.equal(missWords(wish({ kind: "no-cut", under: inch }), 3, "inch"), "3 cuts under it");
  });

  it("tell what a layout loses: wishes that it misses by more, then the first measure that is worse", () => {
    const own = { misses: [0, 4], score };
    const other = { misses: [inch, 4], score: { ...score, slivers: 3, cuts: 5 } };
    assert.equal(
      lossWords(other, own, [meet, few], "inch"),
      "`courses meet` (1 in off in all), 3 more slivers",
    );
    assert.equal(lossWords(own, own, [meet, few], "inch"), "nothing");
  });

  it("price a wish that isn't met, or say that none comes nearer", () => {
    const own = { misses: [inch, 4], score };
    assert.equal(
      priceWords({ wish: meet, missed: inch, nearest: null }, own, [meet, few], "inch"),
      "no layout was found that comes nearer",
    );
    assert.equal(isMet({ wish: meet, missed: 0, nearest: null }), true);
    assert.equal(isMet({ wish: few, missed: 4, nearest: null }), true);
    assert.equal(isMet({ wish: meet, missed: 4, nearest: null }), false);
  });
});
