import assert from "node:assert/strict";
import { fraction } from "../../../src/measure/index.js";
import { ratioOf } from "../../../src/language/resolve/ratio.js";

describe("a ratio", () => {
  it("is in lowest terms", () => {
    assert.deepEqual(ratioOf(fraction(2n, 4n)), { p: 1, q: 2 });
    assert.deepEqual(ratioOf(fraction(-1n, 3n)), { p: -1, q: 3 });
  });

  it("has terms of at most 1000", () => {
    assert.deepEqual(ratioOf(fraction(999n, 1000n)), { p: 999, q: 1000 });
    assert.equal(ratioOf(fraction(1n, 1001n)), null);
    assert.equal(ratioOf(fraction(-1001n, 2n)), null);
  });
});
