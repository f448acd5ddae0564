import assert from "node:assert/strict";
import { planPage } from "../../../src/sheets/paper/plan-page.js";
import { exampleGround, tableOf, wordsOf } from "./sheet-bench.js";

describe("the page of the whole job", () => {
  const page = planPage(exampleGround("three-walls.tileplan"));

  it("begins with the cautions", () => {
    const [first] = page.blocks;
    assert.ok(first?.kind === "caution");
    assert.ok(first.lines.some((line) => line.includes("silica")));
  });

  it("has the order of work and the checks of every wall", () => {
    assert.match(wordsOf(page.blocks), /Order of work\nHave the backing sound/);
    for (const wall of ["Entry wall", "Back wall", "Plumbing wall"]) {
      assert.ok(tableOf(page.blocks, wall).rows.length > 0);
    }
    assert.equal(page.wall, null);
  });
});
