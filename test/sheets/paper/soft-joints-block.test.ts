import assert from "node:assert/strict";
import { softJointBlocks } from "../../../src/sheets/paper/soft-joints-block.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, tableOf } from "./sheet-bench.js";

describe("the soft joints of a wall", () => {
  it("are its own, each with its length, width and depth", () => {
    const ground = benchGround(wallText(), wallText({ name: "side", size: "30 x 24" }));
    const { rows } = tableOf(softJointBlocks(ground, "side"));
    assert.deepEqual(
      rows.map(([along]) => along),
      ["left", "right", "bottom", "top"],
    );
    assert.deepEqual(rows.at(-1), ["top", "30 in", "1/8 in", "1/8 in"]);
  });

  it("are none where the plan has none", () => {
    assert.deepEqual(softJointBlocks(benchGround(wallText()), "nobody"), []);
  });
});
