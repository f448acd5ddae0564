import assert from "node:assert/strict";
import { inches, wallText } from "../setting-out/plans.js";
import { benchGround } from "./sheet-bench.js";

describe("the ground of a sheet", () => {
  it("prints lengths in the plan's units, and to be read off in both systems", () => {
    const { length, both, revision } = benchGround(wallText());
    assert.equal(length(inches(2.625)), "2 5/8 in");
    assert.equal(both(inches(2.625)), "2 5/8 in (66.7 mm)");
    assert.equal(revision, "r1");
  });
});
