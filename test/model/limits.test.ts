import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { halfLimit, LIMITS, sliverLimit } from "../../src/model/index.js";

const INCH = NM_PER.inch;

describe("the sliver limit (common practice)", () => {
  it("is a third of the tile, and at least 1 in where the tile is 2 in or more", () => {
    assert.equal(sliverLimit(6 * INCH, {}), 2 * INCH);
    assert.equal(sliverLimit(2 * INCH, {}), INCH);
    assert.equal(sliverLimit(2 * INCH - 1, {}), Math.ceil((2 * INCH - 1) / 3));
  });

  it("is rounded up, so that under it means under a third", () => {
    assert.equal(sliverLimit(100, {}), 34);
  });

  it("is the plan's own where it states one, and nothing where it is off", () => {
    assert.equal(sliverLimit(6 * INCH, { sliver: { kind: "length", nm: 7 } }), 7);
    assert.equal(sliverLimit(6 * INCH, { sliver: { kind: "off" } }), 0);
  });
});

describe("the half limit (ANSI A108.02 4.3.2)", () => {
  it("is half the tile, rounded up, or nothing where it is off", () => {
    assert.equal(halfLimit(101, {}), 51);
    assert.equal(halfLimit(101, { half: { kind: "off" } }), 0);
  });
});

describe("the names of limits", () => {
  it("are plain words, each with its shape and what it bounds", () => {
    for (const [name, { shape, about }] of Object.entries(LIMITS)) {
      assert.match(name, /^[a-z]+$/);
      assert.match(shape, /^(length|ratio|switch)$/);
      assert.notEqual(about, "");
    }
  });
});
