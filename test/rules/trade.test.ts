import assert from "node:assert/strict";
import type { Limits } from "../../src/model/index.js";
import { lengthLimit, ratioLimit, smallerOffset } from "../../src/rules/trade.js";

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

describe("a bond's offset", () => {
  it("is taken the shorter way round", () => {
    assert.deepEqual(smallerOffset({ p: 1, q: 3 }), { p: 1, q: 3 });
    assert.deepEqual(smallerOffset({ p: 2, q: 3 }), { p: 1, q: 3 });
    assert.deepEqual(smallerOffset({ p: 0, q: 1 }), { p: 0, q: 1 });
  });
});
