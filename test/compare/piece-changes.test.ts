import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { comparisonOf, edited, WALL } from "./wall.js";

function changes(...edits: readonly (readonly [string, string])[]) {
  return comparisonOf(WALL, edited(WALL, ...edits)).walls[0]!.pieces;
}

describe("pieceChanges", () => {
  it("puts pieces together that were cut alike and are cut alike", () => {
    const { recut, kept, moved } = changes([
      "top ceiling movement 1/8",
      "top ceiling movement 1/4",
    ]);
    assert.equal(recut.length, 1);
    const [{ count, before, after, courses }] = recut as [(typeof recut)[0]];
    assert.deepEqual([count, kept, moved], [10, 48, []]);
    assert.deepEqual(courses, { before: [6], after: [6] });
    assert.deepEqual(before.height, { least: 2 * NM_PER.inch, most: 2 * NM_PER.inch });
    assert.equal(after.height.most, (15 / 8) * NM_PER.inch);
  });

  it("counts moves of one way together", () => {
    const { moved } = changes(["full course from bottom", "joint at 4 5/16"]);
    assert.deepEqual(
      moved.map(({ by }) => by),
      [{ across: 0, up: NM_PER.inch / 8 }],
    );
  });

  it("gives scribed pieces of one side as from the least to the most", () => {
    const { recut } = changes([
      "bottom counter movement",
      "bottom counter measured 0: 0, 41 3/8: 1/4 movement",
    ]);
    const scribed = recut.filter(({ after }) => after.cut === "scribe");
    assert.equal(scribed.length, 1);
    assert.ok(scribed[0]!.after.height.least < scribed[0]!.after.height.most);
  });
});
