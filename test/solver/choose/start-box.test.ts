import assert from "node:assert/strict";
import { movedSpan } from "../../../src/solver/choose/start-box.js";

describe("a span", () => {
  it("is moved with both its ends", () => {
    assert.deepEqual(movedSpan({ from: -2, to: 5 }, 3), { from: 1, to: 8 });
  });
});
