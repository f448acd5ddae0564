import assert from "node:assert/strict";
import {
  isSolid,
  mayHaveDepth,
  OPENING_KINDS,
  plateReach,
  plateSize,
} from "../../src/model/index.js";

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

describe("a plate", () => {
  it("is as wide as it is high where it is round, and reaches half of that, rounded up", () => {
    assert.deepEqual(plateSize({ kind: "round", across: 7 }), { across: 7, up: 7 });
    assert.deepEqual(plateSize({ kind: "square", across: 7, up: 4 }), { across: 7, up: 4 });
    assert.deepEqual(plateReach({ plate: { kind: "square", across: 7, up: 4 } }), {
      across: 4,
      up: 2,
    });
    assert.deepEqual(plateReach({ plate: null }), { across: 0, up: 0 });
  });
});
