import assert from "node:assert/strict";
import { divideRounded, NM_PER, scaleRounded, toMillimetres } from "../../src/measure/index.js";

describe("nanometres", () => {
  it("hold every unit exactly (1 in is 25.4 mm: international yard and pound agreement, 1959)", () => {
    assert.equal(NM_PER.inch, 25_400_000);
    assert.equal(NM_PER.foot, 12 * NM_PER.inch);
    assert.equal(NM_PER.inch / 64, 396_875);
  });

  it("become millimetres for JSON", () => {
    assert.equal(toMillimetres(149_225_001), 149.225001);
  });

  it("are divided with one rounding, halves away from zero", () => {
    assert.equal(divideRounded(5, 2), 3);
    assert.equal(divideRounded(-5, 2), -3);
    assert.equal(divideRounded(7, 3), 2);
  });

  it("are scaled exactly past the whole numbers of a double", () => {
    assert.equal(scaleRounded(9_007_199_254_740_991, 3, 3), 9_007_199_254_740_991);
    assert.equal(scaleRounded(-5, 1, 2), -3);
    assert.equal(scaleRounded(10 ** 13, 10 ** 13 + 1, 10 ** 13), 10 ** 13 + 1);
  });
});
