import assert from "node:assert/strict";
import type { Limits } from "../../src/model/index.js";
import { NM_PER } from "../../src/measure/index.js";
import {
  flatnessFor,
  lengthLimit,
  lippageAt,
  ratioLimit,
  smallerOffset,
} from "../../src/rules/trade.js";

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

describe("how flat a wall is to be", () => {
  const INCH = NM_PER.inch;
  const of = (across: number) => {
    const { long, short } = flatnessFor({ face: { across, up: 4 * INCH } });
    return [long.off, long.in, short.off, short.in].map((nm) => nm / INCH);
  };

  it("is 1/4 in in 10 ft and 1/16 in in 1 ft, and for edges of 15 in and more 1/8 in 10 ft and 1/16 in 2 ft", () => {
    // Quoted in tileletter.com/to-shim-or-not-to-shim.
    assert.deepEqual(of(15 * INCH - 1), [1 / 4, 120, 1 / 16, 12]);
    assert.deepEqual(of(15 * INCH), [1 / 8, 120, 1 / 16, 24]);
  });
});

describe("a bond's offset", () => {
  it("is taken the shorter way round", () => {
    assert.deepEqual(smallerOffset({ p: 1, q: 3 }), { p: 1, q: 3 });
    assert.deepEqual(smallerOffset({ p: 2, q: 3 }), { p: 1, q: 3 });
    assert.deepEqual(smallerOffset({ p: 0, q: 1 }), { p: 0, q: 1 });
  });
});
