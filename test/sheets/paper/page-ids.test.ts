import assert from "node:assert/strict";
import { pageIds } from "../../../src/sheets/paper/page-ids.js";

describe("pageIds", () => {
  it("are letters, digits and hyphens", () => {
    assert.deepEqual(pageIds(["wall-back", "wall-left_2"]), ["wall-back", "wall-left-2"]);
  });

  it("are all different, also where capitals don't count", () => {
    assert.deepEqual(pageIds(["a_b", "a-b", "A-B", "a-b-2"]), ["a-b", "a-b-2", "A-B-3", "a-b-2-2"]);
  });

  it("fit a file's name", () => {
    const [one, two] = pageIds(["x".repeat(300), "x".repeat(300)]);
    assert.ok(one!.length <= 60);
    assert.notEqual(one, two);
  });
});
