import assert from "node:assert/strict";
import { thinned } from "../../../src/solver/choose/budget.js";

describe("places that are thinned", () => {
  it("are all there where there are few", () => {
    assert.deepEqual(thinned([1, 2, 3], 3), [1, 2, 3]);
  });

  it("are taken evenly out of all where there are many, the first and the last too", () => {
    assert.deepEqual(thinned([0, 1, 2, 3, 4, 5, 6, 7, 8], 3), [0, 4, 8]);
  });
});
