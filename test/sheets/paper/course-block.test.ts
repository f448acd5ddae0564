import assert from "node:assert/strict";
import { courseBlocks } from "../../../src/sheets/paper/course-block.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, tableOf, wallOf } from "./sheet-bench.js";

describe("the table of courses", () => {
  const inside = [
    "  window sash {\n    at 14, 9\n    size 10 x 7\n    movement 1/8\n  }",
    "  hole valve at 30, 6 across 1",
  ].join("\n");
  const ground = benchGround(wallText({ inside }));
  const { rows } = tableOf(courseBlocks(ground, wallOf(ground)));

  it("stands as on the wall: the top course first, heights from the datum", () => {
    assert.deepEqual(
      rows.map(([number]) => number),
      ["6", "5", "4", "3", "2", "1"],
    );
    assert.deepEqual(rows.at(-1)!.slice(0, 6), [
      "1",
      "1/8 in",
      "3.2 mm",
      "4 1/8 in",
      "104.8 mm",
      "whole",
    ]);
  });

  it("tells a cut course's height at the left, in the middle and at the right", () => {
    assert.deepEqual(rows[0]!.slice(5, 8), ["3 1/8 in", "3 1/8 in", "3 1/8 in"]);
    assert.deepEqual(rows[1]!.slice(5, 8), ["whole", "–", "–"]);
  });

  it("tells the openings and holes that a course meets", () => {
    assert.deepEqual(
      rows.map((row) => row[8]),
      [
        "–",
        "–",
        "over window sash: 3/8 in high",
        "under window sash: 1/2 in high",
        "hole valve",
        "–",
      ],
    );
  });
});
