import assert from "node:assert/strict";
import { trimScenes } from "../../../src/drawing/scene/trims.js";
import { planOf, solvedWallOf, wallText } from "../support/scene-of.js";

describe("trim in the picture", () => {
  const { solved } = solvedWallOf(
    planOf(
      wallText(
        "  right free trim nose\n  window w {\n    at 10, 8\n    size 14 x 12\n    frame nose mitre\n    inset 0\n    movement 1/8\n  }",
      ),
    ),
  );
  const scenes = trimScenes(solved.trims);

  it("is told run by run, by what it runs along and the side", () => {
    const parts = scenes.map(({ part }) => part).sort();
    assert.deepEqual(parts, ["edge-right", "w-bottom", "w-left", "w-right", "w-top"]);
  });

  it("keeps whole lengths apart from cut and mitred ones, and loses none", () => {
    for (const [i, run] of solved.trims.entries()) {
      assert.equal(scenes[i]!.pieces.length + scenes[i]!.cut.length, run.pieces.length);
      assert.equal(scenes[i]!.pieces.length, run.pieces.filter(({ whole }) => whole).length);
    }
    const bottom = scenes.find(({ part }) => part === "w-bottom")!;
    const mitred = bottom.cut.filter((ring) => ring.length === 8);
    assert.ok(
      mitred.some(([x1, , , , , , x4]) => x1 !== x4),
      "a mitre's ends are slant",
    );
  });
});
