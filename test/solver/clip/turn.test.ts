import assert from "node:assert/strict";
import { crossSign } from "../../../src/solver/clip/turn.js";

describe("crossSign", () => {
  it("tells left from right", () => {
    assert.equal(crossSign(1, 0, 0, 1), 1);
    assert.equal(crossSign(0, 1, 1, 0), -1);
    assert.equal(crossSign(2, 4, 1, 2), 0);
  });

  it("is exact where rounded products can't tell", () => {
    const far = 4_000_000_000_000;
    assert.equal(crossSign(far, far + 1, far + 1, far + 2), -1);
    assert.equal(crossSign(far + 1, far + 2, far, far + 1), 1);
    assert.equal(crossSign(far, far + 1, 2 * far, 2 * far + 2), 0);
  });
});
