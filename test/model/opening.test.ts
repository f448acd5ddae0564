import assert from "node:assert/strict";
import { isSolid, mayHaveDepth, OPENING_KINDS } from "../../src/model/index.js";

describe("an opening's kind", () => {
  it("is a gap in the wall, or a solid thing before it", () => {
    assert.deepEqual(
      OPENING_KINDS.filter((kind) => isSolid({ kind })),
      ["bench", "curb", "soffit"],
    );
  });

  it("may have a depth where something lies level in it or on it", () => {
    assert.deepEqual(
      OPENING_KINDS.filter((kind) => mayHaveDepth({ kind })),
      ["window", "niche", "bench", "curb"],
    );
  });
});
