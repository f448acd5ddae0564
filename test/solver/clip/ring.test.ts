import assert from "node:assert/strict";
import { contains, tidyRing } from "../../../src/solver/clip/ring.js";

describe("a ring", () => {
  it("loses the points on its straight runs and begins at its lowest, leftmost corner", () => {
    assert.deepEqual(tidyRing([5, 5, 0, 5, 0, 3, 0, 0, 2, 0, 5, 0]), [0, 0, 5, 0, 5, 5, 0, 5]);
  });

  it("is nothing when it has no area", () => {
    assert.equal(tidyRing([0, 0, 5, 0, 9, 0]), null);
    assert.equal(tidyRing([0, 0, 5, 5, 0, 0]), null);
  });

  it("contains the places inside it", () => {
    const ell = [0, 0, 10, 0, 10, 5, 5, 5, 5, 10, 0, 10];
    assert.equal(contains(ell, 2, 8), true);
    assert.equal(contains(ell, 8, 8), false);
    assert.equal(contains(ell, 8, 2), true);
  });
});
