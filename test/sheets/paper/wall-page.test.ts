import assert from "node:assert/strict";
import { wallPage } from "../../../src/sheets/paper/wall-page.js";
import type { Ground } from "../../../src/sheets/paper/ground.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, exampleGround, wallOf, wordsOf } from "./sheet-bench.js";

function page(ground: Ground, name: string) {
  const i = ground.solved.walls.findIndex(({ wall }) => wall.name === name);
  return wallPage(ground, wallOf(ground, name), ground.takeoff.walls[i]!);
}

describe("a wall's page", () => {
  it("has all that is taped to the wall, in the order of use", () => {
    const back = page(exampleGround("three-walls.tileplan"), "back");
    const headings = back.blocks.flatMap((block) => (block.kind === "heading" ? [block.text] : []));
    assert.deepEqual(headings, ["Level and plumb lines", "Courses", "Cuts", "Soft joints", "Trim"]);
    assert.deepEqual(
      back.blocks.slice(0, 2).map(({ kind }) => kind),
      ["picture", "table"],
    );
    assert.deepEqual([back.title, back.wall], ["Back wall", "back"]);
  });

  it("begins with what must be settled before it is cut", () => {
    const [first] = page(exampleGround("faults.tileplan"), "first").blocks;
    assert.ok(first?.kind === "caution");
    assert.equal(first.lines[0], "Do not cut before this is settled:");
  });

  it("says so where nothing is laid, or too much is asked for", () => {
    const bare = 'wall bare "Bare" {\n  size 10 x 10\n}';
    assert.match(wordsOf(page(benchGround(bare), "bare").blocks), /No tile is laid/);
    const huge = benchGround(wallText({ size: "30000 x 30000" }));
    assert.match(wordsOf(page(huge, "back").blocks), /Not laid: it asks for \d+ pieces/);
  });
});
