import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { drains, fallRatio, isOverWater, leastFall, wantedFall } from "../../src/rules/fall.js";
import { solveClean } from "../support/solve-text.js";
import { wallText } from "./wall-text.js";

const IN = NM_PER.inch;
const USUAL = { p: 1, q: 48 };

// 1/4 in per ft: fcimag.com/articles/93759; ANSI A108.01 3.6.4.
describe("the fall of a sill", () => {
  it("is 1/48 of its depth, or as the plan states", () => {
    assert.deepEqual(fallRatio({}), USUAL);
    const { p, q } = fallRatio({ fall: { kind: "ratio", p: 1, q: 24 } });
    assert.deepEqual([p, q], [1, 24]);
  });

  it("is 1 in over 48 in, to the nanometre", () => {
    assert.equal(leastFall(48 * IN, USUAL, "inch"), IN);
    assert.equal(drains(IN, { depth: 48 * IN }, USUAL), true);
    assert.equal(drains(IN - 1, { depth: 48 * IN }, USUAL), false);
    assert.equal(drains(IN, { depth: 48 * IN + 1 }, USUAL), false);
  });

  it("drains nothing back into the wall, even where the plan asks for none", () => {
    const none = { p: 0, q: 1 };
    assert.equal(drains(0, { depth: IN }, none), true);
    assert.equal(drains(-1, { depth: IN }, none), false);
  });

  it("compares without rounding where the products pass 2^53", () => {
    const depth = 10_000 * NM_PER.m;
    // 999/1000 of 10 km are 9,990 m.
    assert.equal(drains(9_990 * NM_PER.m, { depth }, { p: 999, q: 1000 }), true);
    assert.equal(drains(9_990 * NM_PER.m - 1, { depth }, { p: 999, q: 1000 }), false);
  });

  it("is marked on the next 1/32 in, or the next 0.1 mm", () => {
    // 3 1/2 in / 48 = 0.0729 in, between 2/32 and 3/32; 89 mm / 48 = 1.854 mm.
    assert.equal(leastFall(3.5 * IN, USUAL, "inch"), (3 * IN) / 32);
    assert.equal(leastFall(89 * NM_PER.mm, USUAL, "mm"), 1.9 * NM_PER.mm);
    assert.equal(leastFall(96 * NM_PER.mm, USUAL, "cm"), 2 * NM_PER.mm);
  });
});

describe("what a sill is wanted to fall", () => {
  const depth = 12 * IN;
  const planOf = (rules: string) => solveClean(wallText({ plan: rules })).solved;

  it("is told with its figure, the trade's where the plan turns the limit off", () => {
    const usual = "at least 1/48 of its depth of 12 in, so 1/4 in, towards the room is wanted";
    assert.equal(wantedFall(planOf(""), { depth, fall: 0 }), usual);
    assert.equal(wantedFall(planOf("rules {\n fall off\n}"), { depth, fall: 0 }), usual);
    assert.match(wantedFall(planOf("rules {\n fall 1/24\n}"), { depth, fall: 0 }), /so 1\/2 in/);
  });

  it("matters over a pan or a tub", () => {
    const wet = (bottom: string) =>
      isOverWater(solveClean(wallText({ edges: `bottom ${bottom} movement 1/8` })).plan.walls[0]!);
    assert.deepEqual(["pan", "tub", "floor", "counter"].map(wet), [true, true, false, false]);
  });
});
