import assert from "node:assert/strict";
import { headingLines, wallHeadings } from "../../../src/drawing/scene/headings.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

const drawn = { left: -100, top: -900, right: 1100, bottom: 100 };

describe("a wall's heading", () => {
  it("is its title and what it is laid with", () => {
    const { solved, setting } = solvedWallOf(planOf(wallText()));
    const texts = wallHeadings(solved, drawn, 2, setting).map(({ text }) => text);
    assert.deepEqual(texts, [
      "Back wall",
      "wall tile (face 6 × 3), running bond 1/2, joint 1/8",
      "Across: full tile from the left. Up: full course from the bottom.",
    ]);
  });

  it("says which starts were chosen for the plan", () => {
    const text = planOf(wallText("", "back", "    bond stack\n    joint 1/8"));
    const { solved, setting } = solvedWallOf(text);
    const lines = headingLines(solved, setting).join(" ");
    assert.equal(lines.match(/\(chosen\)/g)?.length, 2, lines);
  });

  it("stands above what is drawn, its title level with that of a wall of more lines", () => {
    const { solved, setting } = solvedWallOf(planOf(wallText()));
    for (const most of [2, 4]) {
      const labels = wallHeadings(solved, drawn, most, setting);
      assert.ok(labels.every(({ box }) => box.bottom < drawn.top));
    }
    const title = (most: number) => wallHeadings(solved, drawn, most, setting)[0]!.y;
    assert.ok(title(4) < title(2));
  });
});
