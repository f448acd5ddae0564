import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { Lengths } from "../../../src/compare/words/lengths.js";

const INCH = NM_PER.inch;

describe("lengths in a comparison's words", () => {
  const lengths = new Lengths("inch");

  it("say which way and how far", () => {
    assert.equal(lengths.shift({ across: 0, up: (3 / 8) * INCH }), "up 3/8 in");
    assert.equal(lengths.shift({ across: -2 * INCH, up: -INCH }), "left 2 in and down 1 in");
    assert.equal(lengths.shift({ across: 1, up: 0 }), "right a hair");
    assert.equal(new Lengths("mm").shift({ across: 9_500_000, up: 0 }), "right 9.5 mm");
  });

  it("are a range where the ends are told apart", () => {
    assert.equal(lengths.range({ least: INCH, most: INCH }), "1 in");
    assert.equal(lengths.range({ least: INCH, most: 2 * INCH }), "1 in to 2 in");
    assert.equal(lengths.length(INCH / 2), "1/2 in");
  });
});
