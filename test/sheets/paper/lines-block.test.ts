import assert from "node:assert/strict";
import { linesBlocks } from "../../../src/sheets/paper/lines-block.js";
import { type WallText, wallText } from "../setting-out/plans.js";
import { benchGround, tableOf, wallOf, wordsOf } from "./sheet-bench.js";

function blocks(text: WallText) {
  const ground = benchGround(wallText(text));
  return linesBlocks(ground, wallOf(ground));
}

describe("the lines of a wall", () => {
  it("are the datum and the working line, over the bottom's low and high point", () => {
    const text = { bottom: "pan measured 0: 0, 40: 1/2", up: "joint at 4" };
    const levels = tableOf(blocks(text), "Level lines");
    assert.deepEqual(levels.rows, [
      [
        "datum (the plan's level line)",
        "0 in (0 mm)",
        "0 in (0 mm), at 0 in from the left",
        "1/2 in (12.7 mm) under it, at 40 in from the left",
      ],
      [
        "working line: bottom of course 2",
        "4 1/16 in (103.2 mm)",
        "4 1/16 in (103.2 mm), at 0 in from the left",
        "3 9/16 in (90.5 mm), at 40 in from the left",
      ],
    ]);
  });

  it("are the plumb lines with the cuts between them and the wall's ends", () => {
    const [left, right] = tableOf(blocks({}), "Plumb lines").rows;
    assert.deepEqual(left, [
      "left plumb line",
      "4 1/4 in (108 mm)",
      "4 1/4 in (108 mm), all the way up",
      "course 1: 4 in wide",
    ]);
    assert.equal(right![3], "course 1: 2 5/8 in wide");
  });

  it("tell the distance at each reading of an end that leans", () => {
    const [, right] = tableOf(
      blocks({ right: "wall measured 0: 1/4, 24: -1/4" }),
      "Plumb lines",
    ).rows;
    assert.equal(right![2], "3 1/8 in (79.4 mm) at 0 in up; 2 5/8 in (66.7 mm) at 24 in up");
  });

  it("say so where a wall is too narrow for plumb lines", () => {
    assert.match(wordsOf(blocks({ size: "8 x 24" })), /No plumb line/);
  });

  it("are none where nothing is laid", () => {
    const ground = benchGround('wall back "Bare" {\n  size 10 x 10\n}');
    assert.deepEqual(linesBlocks(ground, wallOf(ground)), []);
  });
});
