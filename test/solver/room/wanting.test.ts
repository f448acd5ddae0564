import assert from "node:assert/strict";
import type { Wanted, Wish } from "../../../src/model/index.js";
import { compareCosts, sumOf } from "../../../src/solver/room/cost.js";
import {
  costAt,
  costOf,
  hasMore,
  leastCost,
  limitsUnder,
  noCost,
  scoreIn,
  wantingOf,
  wishesOf,
  worstCost,
} from "../../../src/solver/room/wanting.js";
import { layOf, wallOf } from "../several-lays.js";

const lay = layOf("field");
const { plan } = wallOf([lay]);

function wish(wanted: Wanted, wall: string | null = null): Wish {
  return { wanted, wall, origin: lay.origin };
}

const meet = wish({ kind: "courses-meet" });
const cuts = wish({ kind: "few-cuts" }, "back");
const sash = { wall: "side", opening: "sash" };
const wanting = wantingOf(plan, [meet, cuts]);
const score = { slivers: 1, underHalf: 2, imbalance: 3, cuts: 4, tiles: 5, jointOver: 6 };

describe("what is wanted of a room", () => {
  it("ranks its wishes from 1, behind whether tile is laid at all", () => {
    assert.deepEqual(
      wanting.wishes.map(({ wish: each, place }) => [each, place]),
      [
        [meet, 1],
        [cuts, 2],
      ],
    );
  });

  it("costs what lays nothing, what each wish misses in its rank, then the score", () => {
    const cost = costOf(wanting, new Map([[2, 9]]), score);
    assert.deepEqual(cost, [0, 0, 9, 1, 2, 3, 4, 5, 6]);
    assert.deepEqual(scoreIn(cost), score);
    assert.equal(costOf(wanting, new Map(), { ...score, tiles: 0 })[0], 1);
  });

  it("costs no cuts and tiles at least, where nothing is known of them", () => {
    const least = leastCost(wanting, new Map([[1, 7]]), score, 6);
    assert.deepEqual(least, [0, 7, 0, 1, 2, 3, 0, 0, 6]);
  });

  it("costs nothing with nothing missed, and one wish alone in its rank", () => {
    assert.deepEqual(noCost(wanting), [0, 0, 0, 0, 0, 0, 0, 0, 0]);
    assert.deepEqual(costAt(wanting, 2, 8), [0, 0, 8, 0, 0, 0, 0, 0, 0]);
    const cost = costOf(wanting, new Map([[1, 7]]), score);
    assert.deepEqual(sumOf(cost, noCost(wanting)), cost);
  });

  it("has more in its score than a cost that is less in the first measure that differs", () => {
    const most = costOf(wanting, new Map([[1, 7]]), { ...score, imbalance: 0, jointOver: 0 });
    assert.equal(hasMore(score, most), false);
    for (const measure of ["slivers", "underHalf", "cuts", "tiles"] as const) {
      assert.equal(hasMore({ ...score, [measure]: score[measure] + 1 }, most), true);
      assert.equal(hasMore({ ...score, tiles: 99, [measure]: score[measure] - 1 }, most), false);
    }
    assert.equal(hasMore(score, costOf(wanting, new Map(), { ...score, imbalance: -1 })), true);
  });

  it("costs most where it can't be laid: more than many walls that lay nothing", () => {
    const empty = costOf(wanting, new Map([[1, Number.MAX_SAFE_INTEGER]]), { ...score, tiles: 0 });
    const many = empty.map((number) => 1000 * number);
    assert.ok(compareCosts(worstCost(wanting), many) > 0);
  });
});

describe("the wishes of some kinds for a wall", () => {
  const all = wantingOf(plan, [
    meet,
    cuts,
    wish({ kind: "few-cuts" }),
    wish({ kind: "centre", on: sash }),
    wish({ kind: "whole-at-opening", at: "sill", of: sash }),
  ]);
  const places = (wall: string, ...kinds: Wanted["kind"][]) =>
    wishesOf(all, wall, kinds).map(({ place }) => place);

  it("are those that name it, and those for the whole room", () => {
    assert.deepEqual(places("back", "few-cuts"), [2, 3]);
    assert.deepEqual(places("side", "few-cuts"), [3]);
    assert.deepEqual(places("side", "few-cuts", "courses-meet"), [1, 3]);
  });

  it("are those of an opening on its own wall alone", () => {
    assert.deepEqual(places("side", "centre", "whole-at-opening"), [4, 5]);
    assert.deepEqual(places("back", "centre", "whole-at-opening"), []);
  });
});

describe("limits by which small cuts are counted", () => {
  it("have slivers under the size and count no halves; the rest stays", () => {
    const limits = { ...plan.limits, half: { kind: "length", nm: 5 } as const };
    assert.deepEqual(limitsUnder(limits, 40), {
      ...plan.limits,
      sliver: { kind: "length", nm: 40 },
      half: { kind: "off" },
    });
  });
});
