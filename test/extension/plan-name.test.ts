import assert from "node:assert/strict";
import { planName } from "../../src/extension/plan-name.js";

describe("a plan's name", () => {
  it("is that of its file", () => {
    assert.equal(planName({ path: "/home/a/bath.tileplan" }), "bath.tileplan");
    assert.equal(planName({ path: "Untitled-1" }), "Untitled-1");
  });
});
