import assert from "node:assert/strict";
import { dashes } from "../../../src/drawing/svg/dashes.js";

describe("a dash pattern", () => {
  it("is told in ems and written in millimetres, to the thousandth", () => {
    assert.equal(dashes([0.35, 0.2], 40), "14 8");
    assert.equal(dashes([1 / 3], 1), "0.333");
  });
});
