import assert from "node:assert/strict";
import { aligned } from "../../src/sheets/aligned.js";

describe("aligned", () => {
  it("sets the first column to the left and the others to the right", () => {
    const rows = [
      ["", "cuts"],
      ["across", "4"],
    ];
    assert.deepEqual(aligned(rows), ["        cuts", "across     4"]);
  });

  it("has no lines of no rows", () => {
    assert.deepEqual(aligned([]), []);
  });
});
