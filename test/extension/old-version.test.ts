import assert from "node:assert/strict";
import { missing } from "../../src/extension/old-version.js";

describe("what is missing", () => {
  it("says why", () => {
    assert.deepEqual(missing("There is no commit yet."), {
      kind: "missing",
      why: "There is no commit yet.",
    });
  });
});
