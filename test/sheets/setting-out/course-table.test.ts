import assert from "node:assert/strict";
import { courseRows } from "../../../src/sheets/setting-out/course-table.js";
import { inches, laid, type WallText, wallText } from "./plans.js";

function rows(text: WallText) {
  const { lay } = laid(wallText(text));
  return courseRows(lay);
}

describe("the course table", () => {
  it("tells each course's heights from the datum, and whether the wall cuts it", () => {
    const all = rows({});
    assert.deepEqual(
      all.map(({ number, bottom, cut }) => [number, bottom, cut]),
      [1, 2, 3, 4, 5, 6].map((n) => [n, inches(0.125 + (n - 1) * 4.125), n === 6]),
    );
    // From 20 3/4 to the soft joint under the ceiling, at 23 7/8.
    assert.equal(all[5]!.heights.middle, inches(3.125));
  });

  it("tells a scribed course's height at the left, in the middle and at the right", () => {
    const [first] = rows({ bottom: "pan measured 0: 0, 40: 1", left: "wall", up: "joint at 4" });
    // Its top is at 3 15/16; the bottom rises from 1/8 at 0 to 1 1/8 at 40; the region from 1/8 to 39 7/8.
    const height = (x: number) => 3.9375 - 0.125 - x / 40;
    assert.deepEqual(first!.heights, {
      left: inches(height(0.125)),
      middle: inches(height(20)),
      right: inches(height(39.875)),
    });
  });

  it("tells 0 where a course has no piece", () => {
    const [first] = rows({ bottom: "pan measured 0: 0, 20: 0, 30: 5, 40: 5", up: "joint at 4" });
    assert.equal(first!.heights.right, 0);
  });

  it("tells what is left of a course under and over an opening, and what stands beside it", () => {
    const inside = [
      "  window sash {\n    at 14, 9\n    size 10 x 7\n    movement 1/8\n  }",
      "  hole valve at 30, 6 across 1",
    ].join("\n");
    const meets = rows({ inside }).map((row) =>
      row.meets.map((met) => (met.kind === "hole" ? met.hole.name : [met.place, met.rest])),
    );
    // Tile ends at 8 7/8 under the sash and begins at 16 1/8 over it; courses 3 and 4 begin at 8 3/8 and 12 1/2.
    assert.deepEqual(meets, [
      [],
      ["valve"],
      [["under", inches(0.5)]],
      [["over", inches(0.375)]],
      [],
      [],
    ]);
  });

  it("tells both of a course that is higher than the opening, and beside where it is as high", () => {
    const slot = (at: string, size: string) =>
      rows({ inside: `  niche slot {\n    at ${at}\n    size ${size}\n    movement 0\n  }` });
    assert.deepEqual(
      slot("14, 9", "10 x 2")[2]!.meets.map((met) => met.kind === "opening" && met.place),
      ["under", "over"],
    );
    assert.deepEqual(
      slot("14, 8", "10 x 5")[2]!.meets.map((met) => met.kind === "opening" && met.place),
      ["beside"],
    );
  });
});
