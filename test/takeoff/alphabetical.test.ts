import assert from "node:assert/strict";
import { alphabetical } from "../../src/takeoff/alphabetical.js";

describe("words of plain letters", () => {
  it("stand by their letters, the shorter of two that begin alike first", () => {
    const words = ["top", "left", "", "left,right", "bottom", "right"];
    assert.deepEqual(words.sort(alphabetical), [
      "",
      "bottom",
      "left",
      "left,right",
      "right",
      "top",
    ]);
    assert.equal(alphabetical("left", "left"), 0);
  });
});
