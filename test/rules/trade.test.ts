import assert from "node:assert/strict";
import type { Limits } from "../../src/model/index.js";
import { NM_PER } from "../../src/measure/index.js";
import { lengthLimit, lippageAt, ratioLimit, smallerOffset } from "../../src/rules/trade.js";

describe("the trade's limits", () => {
  const stated: Limits = {
    leg: { kind: "length", nm: 7 },
    taper: { kind: "ratio", p: 1, q: 8 },
    hole: { kind: "off" },
  };

  it("give way to what the plan states", () => {
    assert.equal(lengthLimit(stated, "leg", 5), 7);
    assert.equal(ratioLimit(stated, "taper", { p: 1, q: 10 }).q, 8);
  });

  it("hold where the plan states nothing, or only `off`", () => {
    assert.equal(lengthLimit(stated, "clear", 5), 5);
    assert.equal(lengthLimit(stated, "hole", 5), 5);
    assert.deepEqual(ratioLimit(stated, "stacked", { p: 1, q: 4 }), { p: 1, q: 4 });
  });
});

describe("the lippage that setting is allowed", () => {
  it("is 1/32 in, and 1/16 in with joints of 1/4 in and more (ANSI A108.02 4.3.7)", () => {
    const quarter = NM_PER.inch / 4;
    assert.equal(lippageAt(quarter - 1), NM_PER.inch / 32);
    assert.equal(lippageAt(quarter), NM_PER.inch / 16);
  });
});

describe("a bond's offset", () => {
  it("is taken the shorter way round", () => {
    assert.deepEqual(smallerOffset({ p: 1, q: 3 }), { p: 1, q: 3 });
    assert.deepEqual(smallerOffset({ p: 2, q: 3 }), { p: 1, q: 3 });
    assert.deepEqual(smallerOffset({ p: 0, q: 1 }), { p: 0, q: 1 });
  });
});
