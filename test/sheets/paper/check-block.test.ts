import assert from "node:assert/strict";
import { checkBlocks } from "../../../src/sheets/paper/check-block.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, exampleGround, tableOf, wallOf } from "./sheet-bench.js";

describe("the table of checks", () => {
  it("tells what to measure, the plan's figure, and where to stop and why", () => {
    const ground = benchGround(wallText());
    const { rows, caption } = tableOf(checkBlocks(ground, wallOf(ground)));
    assert.match(caption, /^back wall: stop and ask/);
    assert.deepEqual(rows[1], [
      "from the right plumb line to the right corner, at both ends and in the middle",
      "2 7/8 in (73 mm)",
      "2 1/4 in: a cut goes under half",
      "4 1/4 in: the joint opens",
    ]);
    assert.deepEqual(rows[0]!.slice(2), ["4 1/8 in: the joint closes", "–"]);
  });

  it("has words for each kind of measure", () => {
    const ground = exampleGround("three-walls.tileplan");
    const told = tableOf(checkBlocks(ground, wallOf(ground))).rows.map(([what]) => what);
    for (const words of [
      "from the working line to the pan, 30 in from the left",
      "from the working line to the ceiling, at both ends and in the middle",
      "from the left plumb line to the rough opening of window sash, its left",
      "from the working line to the rough opening of window sash, its top",
      "tile and bed of Entry wall, over the left end",
      "10 tiles and 10 joints laid dry, upright",
    ]) {
      assert.ok(told.includes(words), words);
    }
  });

  it("measures a narrow wall from end to end", () => {
    const ground = benchGround(wallText({ size: "7 3/8 x 24" }));
    const told = tableOf(checkBlocks(ground, wallOf(ground))).rows.map(([what]) => what);
    assert.ok(told.includes("from end to end, 24 in up"));
  });
});
