import assert from "node:assert/strict";
import { counted } from "../../src/measure/counted.js";

describe("counted", () => {
  it("puts a noun in the number of its count", () => {
    assert.equal(counted(0, "piece"), "0 pieces");
    assert.equal(counted(1, "piece"), "1 piece");
    assert.equal(counted(2, "piece"), "2 pieces");
    assert.equal(counted(1, "box", "boxes"), "1 box");
    assert.equal(counted(3, "box", "boxes"), "3 boxes");
  });
});
