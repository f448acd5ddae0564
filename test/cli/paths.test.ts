import assert from "node:assert/strict";
import { isInside, shownPath } from "../../src/cli/paths.js";

describe("paths", () => {
  it("are inside a folder when they are it or below it", () => {
    assert.ok(isInside("/job", "/job"));
    assert.ok(isInside("/job/a", "/job"));
    assert.ok(isInside("/job/..a", "/job"), "a name may begin with two dots");
    assert.ok(!isInside("/jobs", "/job"));
    assert.ok(!isInside("/", "/job"));
  });

  it("are shown from the working folder where they are inside it", () => {
    assert.equal(shownPath("/job/walls/a.tileplan", "/job"), "walls/a.tileplan");
    assert.equal(shownPath("/stock.tileplan", "/job"), "/stock.tileplan");
  });
});
